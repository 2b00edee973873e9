/** A place in a line: the larger places it lies in, its own name as the way to its page, its code. */
import Link from "next/link";

export function PlaceLink({
  place,
  within = [],
}: {
  place: { id: string; code: string; name: string };
  within?: readonly string[];
}) {
  return (
    <>
      {within.map((name) => `${name}, `)}
      <Link href={`/places/${place.id}`}>{place.name}</Link>{" "}
      <span className="mono quiet small">{place.code}</span>
    </>
  );
}

/** A place in a list to choose from: by its code, so that typing the code finds it. */
export function placeChoice(place: {
  id: string;
  code: string;
  name: string;
  within: readonly string[];
}): readonly [value: string, word: string] {
  const around = [...place.within].reverse().join(", ");
  return [place.id, `${place.code}  ${place.name}${around ? ` (${around})` : ""}`];
}
