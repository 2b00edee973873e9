/**
 * A box in which a name is drawn. Its strokes go with the form as the path of an
 * SVG in whole numbers of the box, so that a paper prints them as they were drawn.
 * Without scripts the box is not there, and the typed name signs.
 */
"use client";

import { type PointerEvent, useRef, useState, useSyncExternalStore } from "react";
import fieldStyles from "#app/_parts/fields.module.css";
import { signingWords as words } from "#app/_words/en/mandates.ts";
import styles from "#app/(signed-in)/loans/[id]/agreement/drawn-name.module.css";
import { strokeBox } from "#lib/agreements/signing.ts";

/** Where the pointer is, in whole numbers of the box. */
function placeOf(event: PointerEvent<SVGSVGElement>): string {
  const frame = event.currentTarget.getBoundingClientRect();
  const along = (offset: number, size: number, whole: number) =>
    Math.min(whole, Math.max(0, Math.round((offset / size) * whole)));
  const x = along(event.clientX - frame.left, frame.width, strokeBox.width);
  const y = along(event.clientY - frame.top, frame.height, strokeBox.height);
  return `${x} ${y}`;
}

const never = () => () => {};

export function DrawnName() {
  const listens = useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
  const [strokes, setStrokes] = useState("");
  const [isDown, setDown] = useState(false);
  const hint = useRef<HTMLParagraphElement>(null);
  if (!listens) return <input type="hidden" name="strokes" value="" />;
  return (
    <div className={fieldStyles.field}>
      <span id="drawn-name-label" className={fieldStyles.label}>
        {words.draw}
      </span>
      <svg
        className={styles.box}
        viewBox={`0 0 ${strokeBox.width} ${strokeBox.height}`}
        aria-labelledby="drawn-name-label"
        aria-describedby="drawn-name-hint"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          const place = placeOf(event);
          setDown(true);
          setStrokes((before) => `${before}M${place}L${place}`);
        }}
        onPointerMove={(event) => {
          if (!isDown) return;
          const place = placeOf(event);
          setStrokes((before) => (before.endsWith(`L${place}`) ? before : `${before}L${place}`));
        }}
        onPointerUp={() => setDown(false)}
        onPointerCancel={() => setDown(false)}
      >
        <title>{words.draw}</title>
        <path d={strokes} className={styles.strokes} />
      </svg>
      <input type="hidden" name="strokes" value={strokes} />
      <p id="drawn-name-hint" ref={hint} tabIndex={-1} className="quiet small" aria-live="polite">
        {strokes === "" ? words.drawHint : words.drawn}{" "}
        {strokes !== "" && (
          <button
            type="button"
            className="plain"
            onClick={() => {
              // The button goes with the strokes; who came by the keyboard stays where it was.
              hint.current?.focus();
              setStrokes("");
            }}
          >
            {words.clear}
          </button>
        )}
      </p>
    </div>
  );
}
