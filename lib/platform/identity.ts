/** New ids: UUIDv7, which sort by the time they were made. Never for donor pseudonyms, which must not tell when. */
import { v7 } from "uuid";
import { z } from "zod";

export const Id = z.uuid();
export type Id = z.infer<typeof Id>;

export function newId(): Id {
  return v7();
}
