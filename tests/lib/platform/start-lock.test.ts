/** The lock under which the program starts, against living, dead and renumbered holders. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { isAlive, pause, processIdentity, withLock } from "#app/_server/launch/lock.mjs";

let folder: string;
let lock: string;
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), "anatheca-lock-"));
  lock = path.join(folder, "start.lock");
});
afterEach(() => {
  fs.rmSync(folder, { recursive: true, force: true });
});

/** A process that does nothing until it is killed. */
async function idleProcess() {
  const child = spawn(process.execPath, ["-e", "setInterval(() => {}, 1000); console.log('up')"], {
    stdio: ["ignore", "pipe", "ignore"],
  });
  await once(child.stdout, "data");
  const pid = child.pid ?? 0;
  return {
    pid,
    identity: processIdentity(pid) ?? "",
    kill: async () => {
      child.kill("SIGKILL");
      await once(child, "close");
    },
  };
}

describe("a process", () => {
  test("is known by its number and the moment it began, while it lives", async () => {
    const idle = await idleProcess();
    expect(idle.identity).toMatch(new RegExp(`^${idle.pid} .+`));
    expect(isAlive(idle.identity)).toBe(true);
    expect(isAlive(`${idle.pid} another moment`)).toBe(false);
    await idle.kill();
    expect(isAlive(idle.identity)).toBe(false);
  });

  test.each(["", "0 1", "-1 1", "not a number"])("that was never there is not alive: %j", (identity) => {
    expect(isAlive(identity)).toBe(false);
  });
});

describe("the lock", () => {
  test("lets one work at a time and loses nobody", async () => {
    let inside = 0;
    let most = 0;
    let done = 0;
    await Promise.all(
      Array.from({ length: 12 }, () =>
        withLock(lock, async () => {
          inside += 1;
          most = Math.max(most, inside);
          await pause(5);
          inside -= 1;
          done += 1;
        }),
      ),
    );
    expect({ most, done }).toEqual({ most: 1, done: 12 });
    expect(fs.readdirSync(folder)).toEqual([]);
  });

  test("is given back when the work fails", async () => {
    await expect(withLock(lock, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    expect(fs.existsSync(lock)).toBe(false);
  });

  test("is taken over from a holder that was killed", async () => {
    const idle = await idleProcess();
    fs.writeFileSync(lock, `${idle.identity}\nx`);
    await idle.kill();
    expect(await withLock(lock, async () => "mine")).toBe("mine");
  });

  test("is taken over when its holder's number belongs to another process by now", async () => {
    const idle = await idleProcess();
    fs.writeFileSync(lock, `${idle.pid} long ago\nx`);
    expect(await withLock(lock, async () => "mine")).toBe("mine");
    await idle.kill();
  });

  test("is waited for while its holder lives, and taken when the holder dies", async () => {
    const idle = await idleProcess();
    fs.writeFileSync(lock, `${idle.identity}\nx`);
    let entered = false;
    const waiting = withLock(lock, async () => {
      entered = true;
    });
    await pause(300);
    expect(entered).toBe(false);
    await idle.kill();
    await waiting;
    expect(entered).toBe(true);
  });

  test("is held by one process at a time, across processes that start together", async () => {
    const trace = path.join(folder, "trace");
    const program = `
      import fs from "node:fs";
      import { withLock, pause } from ${JSON.stringify(path.resolve("app/_server/launch/lock.mjs"))};
      await withLock(${JSON.stringify(lock)}, async () => {
        fs.appendFileSync(${JSON.stringify(trace)}, "in ");
        await pause(60);
        fs.appendFileSync(${JSON.stringify(trace)}, "out ");
      });`;
    const children = Array.from({ length: 4 }, () =>
      spawn(process.execPath, ["--input-type=module", "-e", program], { stdio: "ignore" }),
    );
    const ends = await Promise.all(children.map((child) => once(child, "close")));
    expect(ends.map(([code]) => code)).toEqual([0, 0, 0, 0]);
    expect(fs.readFileSync(trace, "utf8")).toBe("in out ".repeat(4));
  });
});
