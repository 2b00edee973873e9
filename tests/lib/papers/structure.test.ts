import { expect, test } from "vitest";
import { documentNode, nodesUnder, nodeUnder, rootOf } from "#lib/papers/structure.ts";

test("a node stands below its parent, in the order in which they were made", () => {
  const root = documentNode();
  const first = nodeUnder(root, "H1");
  const [one, two] = nodesUnder(nodeUnder(root, "Table"), "TR", ["a", "b"]);
  expect(root.children.map(({ tag }) => tag)).toEqual(["H1", "Table"]);
  expect(one?.parent).toBe(two?.parent);
  expect(rootOf(two ?? first)).toBe(root);
  expect(nodeUnder(root, "Figure", "A heart").alternative).toBe("A heart");
});
