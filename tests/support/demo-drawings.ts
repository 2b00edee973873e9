/** The drawings of the demo scenario, as its pages ask for them: of each specimen and of each sheet. */
import fs from "node:fs";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import { drawingRequestOf } from "#lib/specimens/drawing/request.ts";
import { sheetPlaceOf } from "#lib/specimens/drawing/sheet-place.ts";
import { type ScenarioSeries, sheetName, shownOnSheet } from "#seed/scenario/series.ts";
import type { ScenarioSpecimen } from "#seed/scenario/shape.ts";

const folder = new URL("../../seed/vocabulary/", import.meta.url);
const latinNames = new Map(
  fs
    .readdirSync(folder)
    .filter((file) => !file.startsWith("names-"))
    .flatMap((file) => fs.readFileSync(new URL(file, folder), "utf8").trim().split("\n").slice(1))
    .map((line): [string, string] => {
      const [id = "", , latin = ""] = line.split("\t");
      return [id, latin];
    }),
);

const withLatin = (shows: ScenarioSpecimen["shows"]) =>
  shows.map((shown) => ({ ...shown, latin: latinNames.get(shown.structureId) ?? "" }));

export function requestOfSpecimen({ record, shows }: ScenarioSpecimen): DrawingRequest {
  return drawingRequestOf({ ...record, shown: withLatin(shows), sheetPlace: null });
}

export function requestOfSheet(series: ScenarioSeries, number: number): DrawingRequest {
  return drawingRequestOf({
    accessionNumber: sheetName(series, number),
    title: `${series.titleStem} ${number}`,
    latinTitle: "",
    kind: "sheet",
    preparation: `${series.series.embedding} sheet`,
    scientificName: "Homo sapiens",
    side: "both",
    shown: withLatin(shownOnSheet(series, number)),
    sheetPlace: sheetPlaceOf({ ...series.series, otherThicknessMm: new Map() }, number),
  });
}
