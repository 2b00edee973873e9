/** Every source says what it is and how well it is known. */
import { expect, test } from "vitest";
import { cite, type SourceId, sources } from "#lib/workings/sources.ts";
import { standings } from "#lib/workings/standing.ts";

test.each(Object.keys(sources) as SourceId[])("%s has a title and a standing", (id) => {
  expect(sources[id].title.length).toBeGreaterThan(5);
  expect(standings).toContain(sources[id].standing);
  expect(cite(id, "table 1")).toEqual({
    id,
    title: sources[id].title,
    where: "table 1",
    standing: sources[id].standing,
  });
});
