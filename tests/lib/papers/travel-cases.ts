/** A small case and its way out. */
import { stageOf, wayOf } from "#lib/papers/paper-case.ts";
import { someCase, stageIds } from "#tests/lib/papers/paper-cases.ts";

export const paperCase = someCase({ specimens: 5, crates: 2 });
export const way = wayOf(paperCase, stageOf(paperCase, stageIds.out));
