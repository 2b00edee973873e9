/** After signing in one comes to a place in this program, and never to the door again. */
import { expect, test } from "vitest";
import { wayBack } from "#app/sign-in/way-back.ts";

test.each(["/", "/loans", "/specimens?q=a&q=b#shows", "/sign-ins", "/%E0%A4%A"])("%s is a way back", (to) => {
  expect(wayBack(to)).toBe(to);
});

test.each([
  "/sign-in",
  "/sign-in?to=/sign-in",
  "/sign-in/",
  "/sign-in#top",
  "//elsewhere.example",
  "/\\elsewhere.example",
  "/\telsewhere",
  "https://elsewhere.example",
  "javascript:alert(1)",
  "",
  undefined,
  ["/loans", "/specimens"],
])("%j is none", (to) => {
  expect(wayBack(to)).toBe("/");
});
