/**
 * What somebody does who is asked for specimens back, in the order in which it is
 * done, each with its day. Use stops at once where that was asked; who fetches
 * them is agreed on at once; what was not asked is not told.
 */
import type { DateText } from "#lib/platform/dates.ts";

export type RecallStep = {
  what: "stop use" | "agree on the way" | "look and pack" | "seal" | "home";
  by: DateText | "now" | "before it leaves";
};

export function recallSteps({ stopUse, returnBy }: { stopUse: boolean; returnBy: DateText }): RecallStep[] {
  return [
    ...(stopUse ? [{ what: "stop use", by: "now" } as const] : []),
    { what: "agree on the way", by: "now" },
    { what: "look and pack", by: "before it leaves" },
    { what: "seal", by: "before it leaves" },
    { what: "home", by: returnBy },
  ];
}
