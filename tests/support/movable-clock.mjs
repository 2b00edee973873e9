// @ts-check
/**
 * Loaded into the server under test before anything else: its clock runs ahead by
 * the hours that stand in a file, so that a test can let crates rest for a day
 * without waiting for it. The file is read anew at most ten times a second.
 */
import fs from "node:fs";

const file = process.env.ANATHECA_TEST_CLOCK;
if (file) {
  const TrueDate = Date;
  const trueNow = TrueDate.now.bind(TrueDate);
  let aheadMs = 0;
  let readAt = 0;
  const now = () => {
    const moment = trueNow();
    if (moment - readAt > 100) {
      readAt = moment;
      aheadMs = fs.existsSync(file) ? Number(fs.readFileSync(file, "utf8")) * 3_600_000 : 0;
    }
    return moment + aheadMs;
  };
  globalThis.Date = /** @type {DateConstructor} */ (
    new Proxy(TrueDate, {
      construct: (target, args, newTarget) =>
        Reflect.construct(target, args.length === 0 ? [now()] : args, newTarget),
      apply: (target) => new target(now()).toString(),
      get: (target, name) => (name === "now" ? now : Reflect.get(target, name)),
    })
  );
}
