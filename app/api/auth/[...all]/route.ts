/** The sign-in library's own endpoints. */
import { auth } from "#app/_server/auth.ts";

export async function GET(request: Request): Promise<Response> {
  return await auth().handler(request);
}

export async function POST(request: Request): Promise<Response> {
  return await auth().handler(request);
}
