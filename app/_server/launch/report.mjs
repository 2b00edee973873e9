// @ts-check
/**
 * What the person at the keyboard reads while the program starts: one line for
 * each long step with the seconds it took, and for each thing that went wrong
 * one sentence that says what to do. A `Halt` carries such a sentence; anything
 * else that is thrown is a fault of the program and is shown as it is.
 */

/** An expected end of the start, with the sentence to print and, above it, the last words of the tool that failed. */
export class Halt extends Error {
  /** @param {string} sentence @param {string} [lastWords] */
  constructor(sentence, lastWords = "") {
    super(sentence);
    this.name = "Halt";
    this.lastWords = lastWords;
  }
}

/** Thrown into whatever is under way when the person asked to stop. */
export class Interrupted extends Error {
  constructor() {
    super("interrupted");
    this.name = "Interrupted";
  }
}

/** The title of the step whose line is still open. */
let openTitle = "";

/** Prints a line; one that comes in the middle of a step begins on a line of its own.
 * @param {string} line */
export function say(line) {
  process.stdout.write(openTitle ? `\n${line}\n${openTitle} ... ` : `${line}\n`);
}

/** @returns {() => string} the time since now, as "3.2 s" */
export function stopwatch() {
  const began = performance.now();
  return () => `${((performance.now() - began) / 1000).toFixed(1)} s`;
}

/**
 * Runs one step under its title. On a terminal the seconds count up in place;
 * in a file there is one line, written when the step begins and closed when it ends.
 * @template T
 * @param {string} title
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function step(title, work) {
  const elapsed = stopwatch();
  const live = process.stdout.isTTY;
  process.stdout.write(`${title} ... `);
  const clock = live
    ? setInterval(() => process.stdout.write(`\r${title} ... ${elapsed()}`), 1000)
    : undefined;
  openTitle = title;
  const close = (/** @type {string} */ end) => {
    clearInterval(clock);
    openTitle = "";
    process.stdout.write(live ? `\r${title} ... ${end}\n` : `${end}\n`);
  };
  try {
    const result = await work();
    close(elapsed());
    return result;
  } catch (error) {
    close(`stopped after ${elapsed()}`);
    throw error;
  }
}

/** @param {string} text */
export const lastLines = (text, count = 25) => text.trimEnd().split("\n").slice(-count).join("\n");

const noSpace = /ENOSPC|No space left on device|disk quota exceeded/i;

/** Prints why the start ended. The sentence comes last.
 * @param {unknown} error */
export function explain(error) {
  const { code, path, stack } = /** @type {NodeJS.ErrnoException} */ (error);
  const message = error instanceof Error ? error.message : String(error);
  if (path !== undefined && ["EACCES", "EPERM", "EROFS"].includes(code ?? "")) {
    console.error(
      `This account may not use ${path}: start as the account that owns it, or give it that folder.`,
    );
    return;
  }
  const lastWords = error instanceof Halt ? error.lastWords : String(stack);
  if (lastWords) console.error(lastLines(lastWords));
  if (noSpace.test(`${message}\n${lastWords}`)) {
    console.error("The disk is full: make room (about 2 GB for everything) and run the same command again.");
  } else if (error instanceof Halt) {
    console.error(message);
  } else {
    console.error("The start ended through a fault of the program itself; the lines above say where.");
  }
}
