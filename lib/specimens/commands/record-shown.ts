/**
 * Stating what a specimen shows: the whole set of rows at once. Rows that stay as
 * they were are not written again. That a structure was removed or is absent is a
 * row of its own; without a row nothing is said.
 */
import { z } from "zod";
import { structureLabels } from "#lib/anatomy/queries.ts";
import { command } from "#lib/people/command.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { listChanges, repeatedAt } from "#lib/specimens/record.ts";
import { Shown } from "#lib/specimens/schema.ts";

export const ShownInput = z.object({ specimenId: Id, shown: z.array(Shown).max(600) });
export type ShownInput = z.infer<typeof ShownInput>;

const shownKey = ({ structureId, side }: Shown) => `${structureId}/${side}`;

export const recordShown = command(
  "recordShown",
  ShownInput,
  async ({ transaction }, { specimenId, shown }) => {
    const locked = await transaction.$queryRaw<
      unknown[]
    >`SELECT 1 FROM specimen WHERE id = ${specimenId}::uuid FOR UPDATE`;
    if (locked.length === 0) throw notFound("specimen");
    const known = await structureLabels(
      transaction,
      shown.map(({ structureId }) => structureId),
    );
    const issues = shown.flatMap(({ structureId }, index) =>
      known.has(structureId) ? [] : [{ path: `shown.${index}.structureId`, message: "structure.unknown" }],
    );
    for (const index of repeatedAt(shown, shownKey))
      issues.push({ path: `shown.${index}.side`, message: "shown.twice" });
    if (issues.length > 0) throw new Refusal("invalid", "input.invalid", {}, issues);

    const before = (await transaction.shown.findMany({ where: { specimenId } })).map(
      ({ structureId, side, seen, state, remark }) => ({ structureId, side, seen, state, remark }) as Shown,
    );
    const changes = listChanges(before, shown, shownKey);
    const rowAt = ({ structureId, side }: Shown) => ({
      specimenId_structureId_side: { specimenId, structureId, side },
    });
    for (const row of changes.removed) await transaction.shown.delete({ where: rowAt(row) });
    for (const row of changes.changed) {
      const { seen, state, remark } = row;
      await transaction.shown.update({ where: rowAt(row), data: { seen, state, remark } });
    }
    await transaction.shown.createMany({ data: changes.added.map((row) => ({ specimenId, ...row })) });
    return { added: changes.added.length, changed: changes.changed.length, removed: changes.removed.length };
  },
);
