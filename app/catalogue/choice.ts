/** Whether this visitor has chosen to see pictures of human specimens: kept until the browser is closed. */
import { cookies } from "next/headers";

const name = "human-pictures";
const shown = "shown";

export async function showsHumanPictures(): Promise<boolean> {
  return (await cookies()).get(name)?.value === shown;
}

export async function keepChoice(shows: boolean): Promise<void> {
  const jar = await cookies();
  if (shows) jar.set(name, shown, { httpOnly: true, sameSite: "lax", path: "/catalogue" });
  else jar.delete({ name, path: "/catalogue" });
}
