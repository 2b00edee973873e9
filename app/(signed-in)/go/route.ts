/** `GET /go?q=…`: one field to go anywhere. */
import { redirect } from "next/navigation";
import { requireViewer } from "#app/_server/viewer.ts";
import { addressOf } from "#app/(signed-in)/go/address.ts";

export async function GET(request: Request): Promise<never> {
  const typed = (new URL(request.url).searchParams.get("q") ?? "").trim().slice(0, 200);
  const viewer = await requireViewer(`/go?q=${encodeURIComponent(typed)}`);
  redirect(await addressOf(viewer, typed));
}
