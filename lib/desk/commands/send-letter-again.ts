/**
 * Puts a letter that could not be sent, or that was kept, back into the outbox,
 * to the same or to a corrected address. What was sent stays sent.
 */
import { z } from "zod";
import { command } from "#lib/people/command.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

export const AgainInput = z.object({ letterId: Id, address: z.email().max(200) });
export type AgainInput = z.infer<typeof AgainInput>;

export const sendLetterAgain = command("sendLetterAgain", AgainInput, async (work, input) => {
  const { transaction, now } = work;
  await transaction.$queryRaw`SELECT 1 FROM mail WHERE id = ${input.letterId}::uuid FOR UPDATE`;
  const letter = await transaction.mail.findUnique({ where: { id: input.letterId } });
  if (!letter) throw notFound("letter");
  if (letter.sentAt !== null) throw new Refusal("conflict", "letter.sent-already");
  await transaction.mail.update({
    where: { id: letter.id },
    data: { address: input.address, queuedAt: now, attempts: 0, fault: "" },
  });
});
