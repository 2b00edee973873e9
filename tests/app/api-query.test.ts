/** Parameters of an address: each once, each known, each of its kind; what is wrong is said of each. */
import { expect, test } from "vitest";
import { z } from "zod";
import { queryFlag, queryNumber, readQuery } from "#app/_server/api.ts";
import { sentence, sentenceForIssue } from "#app/_words/sentences.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const Query = z.strictObject({
  text: z.string().trim().max(5).default(""),
  overdue: queryFlag.default(false),
  limit: queryNumber.pipe(z.number().min(1).max(200)).default(40),
});
const ask = (query: string) => readQuery(new Request(`http://localhost/api/v1/things?${query}`), Query);

function refusalOf(query: string): { reason: string; issues: { path: string; message: string }[] } {
  try {
    ask(query);
  } catch (error) {
    if (error instanceof Refusal) return { reason: error.reason, issues: [...error.issues] };
  }
  throw new Error(`It was not refused: ${query}`);
}

test("what is not asked has its default, and what is asked is read", () => {
  expect(ask("")).toEqual({ text: "", overdue: false, limit: 40 });
  expect(ask("text=%20arm%20&overdue=true&limit=7")).toEqual({ text: "arm", overdue: true, limit: 7 });
});

test.each([
  ["overdue=banana", [{ path: "overdue", message: "query.flag" }]],
  ["limit=x", [{ path: "limit", message: "query.whole-number" }]],
  ["limit=1e9", [{ path: "limit", message: "query.whole-number" }]],
  [
    "state=x&colour=y",
    [
      { path: "state", message: "query.unknown" },
      { path: "colour", message: "query.unknown" },
    ],
  ],
  ["text=a&text=b", [{ path: "text", message: "query.twice" }]],
  ["__proto__=x", [{ path: "__proto__", message: "query.unknown" }]],
])("%s is refused as a question", (query, issues) => {
  expect(refusalOf(query)).toEqual({ reason: "query.invalid", issues });
  for (const { message } of issues) expect(sentenceForIssue(message)).not.toBe(message);
});

test("a bound is said as a bound, a text too long as such, and nothing speaks of saving", () => {
  expect(refusalOf("limit=0").issues.map(({ message }) => sentenceForIssue(message))).toEqual([
    "At least 1.",
  ]);
  expect(refusalOf("text=elbows").issues.map(({ message }) => sentenceForIssue(message))).toEqual([
    "Write at most 5 characters.",
  ]);
  expect(refusalOf("text=a%00").reason).toBe("query.not-storable");
  for (const reason of ["query.invalid", "query.not-storable"])
    expect(sentence(reason)).not.toMatch(/saved/i);
});
