/**
 * Ends with one sentence when Node is too old. It is imported before anything
 * else and uses nothing that an old Node lacks, so that the person reads the
 * sentence and not a syntax error.
 */
const needed = [20, 19];
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < needed[0] || (major === needed[0] && minor < needed[1])) {
  console.error(
    `Anatheca needs Node ${needed.join(".")} or newer and this is Node ${process.versions.node}: install a newer Node and try again.`,
  );
  process.exit(1);
}
