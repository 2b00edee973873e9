/**
 * The program's page that is not there, as an answer of its own: where a file is
 * asked for, no page of the frame can be drawn. It says the same as that page.
 */
import { shellWords } from "#app/_words/en/shell.ts";

const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (text: string) => text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign);

/** The tokens of the program that this page needs. */
const look = `
:root { color-scheme: light dark; --ground: #fbfaf6; --ink: #1d2326; --quiet: #5b6469; --accent: #1b5e63 }
@media (prefers-color-scheme: dark) {
  :root { --ground: #16181a; --ink: #e8e6e0; --quiet: #a3a9ab; --accent: #6fb9be }
}
body { margin: 0; background: var(--ground); color: var(--ink); font: 0.92rem/1.5 system-ui, sans-serif }
main { max-width: 26rem; margin: 12vh auto 4rem; padding: 0 1.2rem }
h1 { font: 500 2.1rem/1.2 Georgia, serif; margin: 0 }
.about { font: italic 1.08rem Georgia, serif; color: var(--quiet); border-bottom: 2px solid var(--ink);
  padding-bottom: 0.8rem; margin-bottom: 1.4rem }
a { color: var(--accent) }`;

/** @param back where the reader came from */
export function noSuchPage(back: { address: string; label: string }): Response {
  const title = escaped(shellWords.notFoundTitle);
  const body = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow">
<title>${title} · Anatheca</title>
<style>${look}</style>
</head>
<body>
<main>
<h1>${title}</h1>
<p class="about">${escaped(shellWords.notFoundText)}</p>
<p><a href="${escaped(back.address)}">${escaped(back.label)}</a></p>
</main>
</body>
</html>
`;
  return new Response(body, {
    status: 404,
    headers: { "content-type": "text/html; charset=utf-8", "cache-control": "private, no-store" },
  });
}
