/**
 * Every address of the program, read from the folder that makes them, so that no
 * test of who may see what can forget a page that came later. A part in square
 * brackets stands for one record: `/specimens/[id]`.
 */
import fs from "node:fs";
import path from "node:path";

const app = path.join(import.meta.dirname, "../../app");

export type Route = { address: string; method: string; isPage: boolean };

/** Folders in round brackets group files and are no part of an address. */
function addressOf(file: string): string {
  const parts = path
    .dirname(file)
    .split(path.sep)
    .filter((part) => part !== "." && !part.startsWith("("));
  return `/${parts.join("/")}`;
}

function methodsOf(source: string): string[] {
  return [
    ...source.matchAll(/^export (?:async function|function|const) (GET|POST|PUT|PATCH|DELETE)\b/gm),
  ].map(([, method = ""]) => method);
}

export function listRoutes(): Route[] {
  const files = fs.readdirSync(app, { recursive: true, encoding: "utf8" }).sort();
  return files.flatMap((file): Route[] => {
    const address = addressOf(file);
    if (path.basename(file) === "page.tsx") return [{ address, method: "GET", isPage: true }];
    if (path.basename(file) !== "route.ts") return [];
    const methods = methodsOf(fs.readFileSync(path.join(app, file), "utf8"));
    return methods.map((method) => ({ address, method, isPage: false }));
  });
}

/** The address of certain records: `/specimens/[id]` with `{ id }`. */
export function fill(address: string, parts: Readonly<Record<string, string>>): string {
  return address.replace(/\[(?:\.\.\.)?(\w+)\]/g, (whole, name: string) => {
    const part = parts[name];
    if (part === undefined) throw new Error(`Nothing is known to stand for ${whole} in ${address}.`);
    return encodeURIComponent(part);
  });
}
