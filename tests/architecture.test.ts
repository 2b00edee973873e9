/**
 * The house as drawn in DEVELOPERS.md, held by a machine: rooms import from lower
 * floors only, pure files stay pure and have a test each, every query and command
 * takes a viewer, the pages hold no query, and no refusal is without its sentence.
 */
import fs from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { english } from "#app/_words/en.ts";

const root = path.resolve(import.meta.dirname, "..");

/** Rooms by floor; a room may import from floors below its own. */
const floors: readonly (readonly string[])[] = [
  ["platform", "workings"],
  ["people", "anatomy"],
  ["provenance"],
  ["specimens"],
  ["whereabouts"],
  ["environment"],
  ["condition"],
  ["transport"],
  ["shipments"],
  ["suitability"],
  ["agreements", "costing"],
  ["loans"],
  ["tours"],
  ["desk", "papers", "exchange"],
];
const floorOf = new Map(floors.flatMap((rooms, floor) => rooms.map((room) => [room, floor] as const)));

const doors = /^(queries|commands)\.ts$|^(commands|queries)\//;

function filesUnder(folder: string, ending: RegExp): string[] {
  return fs
    .readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && ending.test(entry.name))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .sort();
}

const read = (file: string) => fs.readFileSync(path.join(root, file), "utf8");
const importsOf = (source: string) =>
  [...source.matchAll(/(?:import|export)\s[^;]*?from\s+"([^"]+)"/g)].map((match) => match[1] ?? "");
const code = (source: string) => source.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|[^:])\/\/.*$/gm, "$1");

const roomFiles = filesUnder("lib", /\.ts$/);
const inRoom = (file: string) => ({
  room: file.split("/")[1] ?? "",
  rest: file.split("/").slice(2).join("/"),
});
/** Files that may talk to the database, the clock or the disk. */
const isDoor = (file: string) => {
  const { room, rest } = inRoom(file);
  return room === "platform" || (room === "people" && rest === "command.ts") || doors.test(rest);
};
/** Files that wait for a library to read or paint pixels, and know nothing else. */
const painters = new Set(["lib/specimens/picture.ts", "lib/papers/paint.ts"]);
const pureFiles = roomFiles.filter((file) => !isDoor(file) && !painters.has(file));

test("every room stands on a floor", () => {
  const rooms = new Set(roomFiles.map((file) => inRoom(file).room));
  expect([...rooms].filter((room) => !floorOf.has(room))).toEqual([]);
});

test("a room imports from lower floors only", () => {
  const upward = roomFiles.flatMap((file) => {
    const { room } = inRoom(file);
    return importsOf(read(file))
      .map((target) => /^#lib\/([^/]+)\//.exec(target)?.[1])
      .filter((target): target is string => target !== undefined && target !== room)
      .filter((target) => (floorOf.get(target) ?? 99) > (floorOf.get(room) ?? -1))
      .map((target) => `${file} reaches up to ${target}`);
  });
  expect(upward).toEqual([]);
});

test("a room knows no page and no framework", () => {
  const strangers = roomFiles.flatMap((file) =>
    importsOf(read(file))
      .filter((target) => target.startsWith("#app/") || /^(next|react)(\/|$)/.test(target))
      .map((target) => `${file} imports ${target}`),
  );
  expect(strangers).toEqual([]);
});

test("a pure file reads no clock, throws no dice, waits for nothing and knows no database", () => {
  const impure = pureFiles.flatMap((file) => {
    const source = code(read(file));
    const faults = [
      /\bDate\.now\(/,
      /new Date\(\)/,
      /Math\.random\(/,
      /\bawait\b/,
      /performance\.now\(/,
    ].filter((mark) => mark.test(source));
    const reaches = importsOf(source).filter(
      (target) =>
        !/^import type/.test(target) &&
        (/platform\/(database|transaction|clock)\.ts$/.test(target) ||
          doors.test(target.split("/").slice(2).join("/"))),
    );
    const types = [...source.matchAll(/import type[^;]*?from\s+"([^"]+)"/g)].map((match) => match[1]);
    return [...faults.map(String), ...reaches.filter((target) => !types.includes(target))].map(
      (fault) => `${file}: ${fault}`,
    );
  });
  expect(impure).toEqual([]);
});

test("every pure file with a computation has its test", () => {
  const withoutTest = pureFiles
    .filter((file) => /export (async )?function|export const \w+ = (working|\()/.test(read(file)))
    .filter(
      (file) =>
        !/\/(schema|workings|sources|viewer|clause-texts)\.ts$/.test(file) &&
        !file.startsWith("lib/workings/sources/"),
    )
    .filter((file) => !fs.existsSync(path.join(root, "tests", file.replace(/\.ts$/, ".test.ts"))));
  expect(withoutTest).toEqual([]);
});

/** The names a door's first parameter may have, and the one shape that may stand for it. */
const firstParameter =
  /^(viewer|work|reader|transaction|accountId|token|_viewer|_work)\b|^\{[^}]*\}: (Work|Viewer)\b/;

test("every query and command takes the viewer, the work, or a reader first", () => {
  const strangers = roomFiles
    .filter((file) => isDoor(file) && inRoom(file).room !== "platform" && file !== "lib/people/command.ts")
    .flatMap((file) =>
      [...read(file).matchAll(/export (?:async )?function (\w+)(?:<[^>]*>)?\(\s*([^)]*)/g)]
        .filter((match) => !firstParameter.test(match[2] ?? ""))
        .map((match) => `${file}: ${match[1]}(${match[2]})`),
    );
  expect(strangers).toEqual([]);
});

test("no file is longer than 400 lines", () => {
  const long = [
    ...roomFiles,
    ...filesUnder("app", /\.tsx?$/),
    ...filesUnder("tests", /\.ts$/),
    ...filesUnder("seed", /\.ts$/),
  ].filter((file) => read(file).split("\n").length > 401);
  expect(long).toEqual([]);
});

test("pages and parts hold no query of their own", () => {
  const reaching = filesUnder("app", /\.tsx?$/)
    .filter((file) => !file.startsWith("app/_server/"))
    .filter((file) =>
      importsOf(read(file)).some((target) =>
        /platform\/(database|transaction)\.ts$|^\.?#?\.generated/.test(target),
      ),
    );
  expect(reaching).toEqual([]);
});

test("every refusal, fact and way out has its sentence", () => {
  const sources = [...roomFiles, ...filesUnder("app", /\.tsx?$/)].map(read).join("\n");
  const codes = new Set([
    ...[...sources.matchAll(/new Refusal\(\s*"[a-z-]+",\s*"([a-z0-9.-]+)"/g)].map((match) => match[1] ?? ""),
    ...filesUnder("prisma/migrations", /\.sql$/).flatMap((file) =>
      [...read(file).matchAll(/'anatheca:([a-z.-]+)'/g)].map((match) => match[1] ?? ""),
    ),
    ...[...read("lib/platform/transaction.ts").matchAll(/_(?:key|twice): "([a-z.-]+)"/g)].map(
      (match) => match[1] ?? "",
    ),
  ]);
  expect(codes.size).toBeGreaterThan(20);
  expect([...codes].filter((entry) => !(entry in english))).toEqual([]);
});

test("the top level holds what is agreed and nothing else", () => {
  const agreed = new Set(
    "README.md DEVELOPERS.md LICENSE package.json package-lock.json tsconfig.json next.config.js app prisma lib tests seed".split(
      " ",
    ),
  );
  const ignored = new Set(["node_modules", "next-env.d.ts", "test-results"]);
  const extra = fs
    .readdirSync(root)
    .filter(
      (name) =>
        !name.startsWith(".") && !agreed.has(name) && !ignored.has(name) && !name.endsWith(".tsbuildinfo"),
    );
  expect(extra).toEqual([]);
});
