// @ts-check
/**
 * Sentences of pages that stand outside the frame, in English: what is not there,
 * what went wrong, and what is refused at the door, before the pages are reached.
 * Plain JavaScript, because the server reads them before it can read anything else.
 */
export const outsideWords = {
  notFoundTitle: "There is no such page",
  notFoundText:
    "The address may be mistyped, the record may not exist, or it may be one that your role does not open. Check the number, or start from a list; whoever keeps the accounts can tell you what your role opens.",
  errorTitle: "Something went wrong here",
  errorText:
    "Nothing you entered elsewhere is lost. Whether the last step was saved can be seen on the page it was about.",
  foreignTitle: "This form came from elsewhere",
  foreignText:
    "Nothing has been saved: a form is only taken from this program's own pages. Open the page here and fill it in again.",
  tooLargeTitle: "This is too much at once",
  tooLargeText:
    "Nothing has been saved: a form may hold at most 16 MB, pictures included. Send a smaller file.",
  noLengthTitle: "This form does not say how long it is",
  noLengthText: "Nothing has been saved: a form has to state its length before it is sent.",
  unreadableTitle: "This form cannot be read",
  unreadableText: "Nothing has been saved. Open the page anew and send it again.",
  staleTitle: "This form is of an earlier day",
  staleText:
    "Nothing has been saved: the program has been renewed since the page was opened. Open the page anew and fill it in again.",
  start: "To what is due",
  specimens: "To the specimens",
  loans: "To the loans",
};
