/** The card beside the field that goes anywhere: examples that lead somewhere for whoever is signed in. */
import Link from "next/link";
import { currentViewer } from "#app/_server/viewer.ts";
import { goExamples } from "#app/(signed-in)/go/examples.ts";

export async function ShellExamples() {
  const viewer = await currentViewer();
  if (!viewer) return null;
  return (
    <dl>
      {(await goExamples(viewer)).map(({ typed, meaning }) => (
        <div key={typed}>
          <dt>
            <Link href={`/go?q=${encodeURIComponent(typed)}`} prefetch={false}>
              {typed}
            </Link>
          </dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}
