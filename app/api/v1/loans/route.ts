/** `GET /api/v1/loans` lists loans; `POST` opens one. */
import { idempotencyKey, readBody, runOperation } from "#app/_server/api.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { listLoans } from "#lib/loans/queries/list-loans.ts";

type Filter = Parameters<typeof listLoans>[1];
type Page = Parameters<typeof listLoans>[2];

export async function GET(request: Request): Promise<Response> {
  const { after, limit, overdue, ...filter } = Object.fromEntries(new URL(request.url).searchParams);
  const page = { ...(after ? { after } : {}), ...(limit ? { limit: Number(limit) } : {}) };
  const asked = { ...filter, ...(overdue === undefined ? {} : { overdue: overdue === "true" }) };
  return await runOperation((viewer) => listLoans(viewer, asked as Filter, page as Page));
}

export async function POST(request: Request): Promise<Response> {
  return await runOperation(async (viewer) => {
    const input = (await readBody(request)) as Parameters<typeof openLoan>[1];
    return await openLoan(viewer, input, idempotencyKey(request));
  }, 201);
}
