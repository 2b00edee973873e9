/** On which days borrowers are reminded, and who is written to. */
import type { Metadata } from "next";
import { MarginNote, Masthead, PlainPage, Section } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { reminderWords as words } from "#app/_words/en/letters.ts";
import { ReminderForm } from "#app/(signed-in)/centre/reminders/reminder-form.tsx";
import { getReminderPlan } from "#lib/loans/queries/reminders.ts";
import { mayDo } from "#lib/people/permission.ts";

export const metadata: Metadata = { title: words.title };

export default async function RemindersPage() {
  const viewer = await requireViewer("/centre/reminders");
  const plan = await orNotFound(() => getReminderPlan(viewer));
  const days = plan.days.join(", ");
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <Section id="days" title={words.days} margin={<MarginNote title={words.days} source={words.source} />}>
        <p>{words.about}</p>
        <p>{words.who}</p>
        {mayDo(viewer, "configureReminders") ? <ReminderForm days={days} /> : <p>{days}</p>}
      </Section>
    </PlainPage>
  );
}
