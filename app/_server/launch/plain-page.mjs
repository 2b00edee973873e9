// @ts-check
/**
 * A page outside the frame, whole in itself: it needs no script, no style sheet
 * and nobody signed in. It says what is the matter and where to go on.
 */

/** @type {Readonly<Record<string, string>>} */
const escapes = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escaped = (/** @type {string} */ text) => text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign);

/** The tokens of the program that such a page needs. */
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

/** @typedef {{ title: string, text: string, links: readonly { address: string, label: string }[] }} Notice */

/** What such a page says, to be put into another page.
 * @param {Notice} notice */
export function noticeHtml({ title, text, links }) {
  const ways = links.map(
    ({ address, label }) => `<p><a href="${escaped(address)}">${escaped(label)}</a></p>`,
  );
  return `<style>${look}</style>
<main>
<h1>${escaped(title)}</h1>
<p class="about">${escaped(text)}</p>
${ways.join("\n")}
</main>`;
}

/** @param {Notice} notice */
export function plainPage(notice) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow">
<title>${escaped(notice.title)} · Anatheca</title>
</head>
<body>
${noticeHtml(notice)}
</body>
</html>
`;
}
