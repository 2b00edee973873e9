/**
 * The command line of the workings: `npm run -s working -- dew-point < input.json`,
 * or `-- --list`. It needs no database. Bad input ends with status 2 and one JSON
 * object on standard error.
 */
import { text } from "node:stream/consumers";
import { describeWorking, getWorking, listWorkings } from "#app/_server/workings.ts";
import { sentence, sentenceForIssue } from "#app/_words/sentences.ts";
import { Refusal } from "#lib/platform/refusal.ts";

function print(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}

function refuse(
  code: string,
  message: string,
  issues: readonly { path: string; message: string }[] = [],
): void {
  process.stderr.write(`${JSON.stringify({ error: { code, message, issues } })}\n`);
  process.exitCode = 2;
}

async function main(argument: string | undefined): Promise<void> {
  if (argument === "--list") return print(listWorkings().map(describeWorking));
  if (!argument) return refuse("working.none-named", "Name a working, or ask for --list.");
  try {
    const working = getWorking(argument);
    print(working.explain(JSON.parse(await text(process.stdin))));
  } catch (error) {
    if (error instanceof SyntaxError) return refuse("api.not-json", sentence("api.not-json"));
    if (!(error instanceof Refusal)) throw error;
    refuse(
      error.reason,
      sentence(error.reason, error.parameters),
      error.issues.map((issue) => ({ path: issue.path, message: sentenceForIssue(issue.message) })),
    );
  }
}

await main(process.argv[2]);
