/** A mail server on this machine that keeps what it gets. It may be slow, and it may refuse. */
import type { AddressInfo } from "node:net";
import { text } from "node:stream/consumers";
import { SMTPServer } from "smtp-server";

export type Caught = { from: string; to: string[]; content: string };

export type MailTrap = {
  url: string;
  caught: Caught[];
  /** How many letters have begun to come in. */
  begun: () => number;
  close: () => Promise<void>;
};

/** @param answer what becomes of a letter once it is in; without it, it is taken */
export async function catchMail(
  answer: (caught: Caught) => Promise<void> = async () => {},
): Promise<MailTrap> {
  const caught: Caught[] = [];
  let begun = 0;
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onRcptTo(address, _session, callback) {
      if (address.address.startsWith("nobody@"))
        callback(Object.assign(new Error("no such mailbox"), { responseCode: 550 }));
      else callback();
    },
    onData(stream, session, callback) {
      const read = text(stream);
      // Who is killed in the middle of a letter leaves half of it.
      read.catch(() => {});
      stream.once("error", () => {});
      void read.then(
        async (content) => {
          begun += 1;
          const { mailFrom, rcptTo } = session.envelope;
          const letter = {
            from: mailFrom === false ? "" : mailFrom.address,
            to: rcptTo.map(({ address }) => address),
            content,
          };
          await answer(letter);
          caught.push(letter);
          callback();
        },
        () => {},
      );
    },
  });
  server.on("error", () => {});
  await new Promise<void>((resolve) => {
    server.listen(0, "127.0.0.1", () => resolve());
  });
  const { port } = server.server.address() as AddressInfo;
  return {
    url: `smtp://127.0.0.1:${port}`,
    caught,
    begun: () => begun,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
