/** What the two sides have written to each other, and the letters by mail about the loan. */
import { ActForm } from "#app/_parts/act-form.tsx";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { letterPages, messageWords as words } from "#app/_words/en/letters.ts";
import { LetterTable } from "#app/(signed-in)/letters/letter-table.tsx";
import { holdBorrower, markRead, sendMessage } from "#app/(signed-in)/loans/[id]/messages/message-actions.ts";
import { MessageForm } from "#app/(signed-in)/loans/[id]/messages/message-form.tsx";
import styles from "#app/(signed-in)/loans/[id]/messages/messages.module.css";
import type { LetterSheet } from "#lib/desk/queries/letters.ts";
import type { MessageRow } from "#lib/loans/queries/messages.ts";

export function MessagesSection({
  loanId,
  messages,
  letters,
  mayWrite,
  mayHold,
}: {
  loanId: string;
  messages: readonly MessageRow[];
  letters: readonly LetterSheet[];
  mayWrite: boolean;
  /** The last reminder was taken, and somebody may decide on a hold. */
  mayHold: boolean;
}) {
  const hasUnread = messages.some(({ isUnread }) => isUnread);
  return (
    <Section
      id="messages"
      title={letterPages.section}
      margin={
        letters.length > 0 && <MarginNote title={letterPages.about}>{letterPages.aboutNote}</MarginNote>
      }
    >
      {mayHold && (
        <div className="no-print">
          <p>
            <StateMark outcome="attend" />: {words.holdAbout}
          </p>
          <ActForm
            action={holdBorrower.bind(null, loanId)}
            label={words.hold}
            button={words.hold}
            look="outline"
          />
        </div>
      )}
      {messages.length === 0 ? (
        <EmptyState>{words.none}</EmptyState>
      ) : (
        <ol className={styles.messages} aria-label={words.title}>
          {messages.map((message) => (
            <li
              key={message.id}
              className={[styles.message, message.isUnread ? styles.unread : ""].join(" ")}
            >
              <p className="quiet">
                {message.by}, {words.sides[message.side]}, <Moment at={message.writtenAt} />{" "}
                {message.isUnread && <StateMark outcome="attend">{words.unread}</StateMark>}
              </p>
              <p className={styles.text}>{message.text}</p>
            </li>
          ))}
        </ol>
      )}
      {hasUnread && (
        <div className="no-print">
          <ActForm
            action={markRead.bind(null, loanId)}
            label={words.read}
            button={words.read}
            look="outline"
          />
        </div>
      )}
      {mayWrite && <MessageForm action={sendMessage.bind(null, loanId)} />}
      {letters.length > 0 && (
        <details>
          <summary>{words.letters(letters.length)}</summary>
          <LetterTable rows={letters} />
        </details>
      )}
    </Section>
  );
}
