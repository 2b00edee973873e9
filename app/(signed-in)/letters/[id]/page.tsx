/** One letter as it is read by who gets it, and where it stands. */
import type { Metadata } from "next";
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { TextField } from "#app/_parts/fields.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Masthead, PlainPage, Section } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { letterPages as words } from "#app/_words/en/letters.ts";
import { letterText } from "#app/_words/letter-text.ts";
import { sendAgain } from "#app/(signed-in)/letters/actions.ts";
import { LetterStateMark } from "#app/(signed-in)/letters/letter-state-mark.tsx";
import { getLetter } from "#lib/desk/queries/letters.ts";

export const metadata: Metadata = { title: words.title };

export default async function LetterPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/letters/${id}`);
  const letter = await orNotFound(() => getLetter(viewer, id));
  const { subject, text } = letterText(letter.code, letter.parameters, null);
  return (
    <PlainPage>
      <Masthead
        title={subject}
        standing={
          <p>
            <LetterStateMark state={letter.state} />
          </p>
        }
      />
      <Section
        id="text"
        title={words.text}
        margin={<MarginNote title={words.about}>{words.aboutNote}</MarginNote>}
      >
        <div style={{ whiteSpace: "pre-line", maxWidth: "46rem", marginBottom: "1.2rem" }}>{text.trim()}</div>
        <Facts
          facts={[
            [words.to, letter.to === null ? letter.address : `${letter.to}, ${letter.address}`],
            letter.loanId !== null && [
              words.loan,
              <Link key="loan" href={`/loans/${letter.loanId}#messages`}>
                {String(letter.parameters.loan ?? letter.loanId)}
              </Link>,
            ],
            [words.written, <Moment key="written" at={letter.queuedAt} long />],
            letter.sentAt !== null && [words.sentAt, <Moment key="sent" at={letter.sentAt} long />],
            letter.attempts > 0 && [words.attempts, letter.attempts],
            letter.fault !== "" && [words.fault, letter.fault],
          ]}
        />
      </Section>
      {letter.mayGoAgain && (
        <Section id="again" title={words.againTitle}>
          <ActForm
            action={sendAgain.bind(null, letter.id)}
            label={words.again}
            button={words.again}
            look="outline"
          >
            <TextField
              label={words.againAddress}
              name="address"
              type="email"
              defaultValue={letter.address}
              required
            />
          </ActForm>
        </Section>
      )}
      <p className="no-print">
        <Link href="/letters">{words.back}</Link>
      </p>
    </PlainPage>
  );
}
