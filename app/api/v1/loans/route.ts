/** `GET /api/v1/loans` lists loans; `POST` opens one. */
import { z } from "zod";
import {
  idempotencyKey,
  queryFlag,
  queryNumber,
  readBody,
  readQuery,
  runOperation,
  runReading,
} from "#app/_server/api.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { LoanFilter, LoanPage, listLoans } from "#lib/loans/queries/list-loans.ts";

const { phase, borrowerId, text } = LoanFilter.shape;
const { after, limit } = LoanPage.shape;
const LoansQuery = z.strictObject({
  phase,
  overdue: queryFlag.default(false),
  borrowerId,
  text,
  after,
  limit: queryNumber.pipe(limit.unwrap()).default(limit.parse(undefined)),
});

export async function GET(request: Request): Promise<Response> {
  return await runReading(async (viewer) => {
    const query = readQuery(request, LoansQuery);
    return await listLoans(viewer, query, query);
  });
}

export async function POST(request: Request): Promise<Response> {
  return await runOperation(async (viewer) => {
    const input = (await readBody(request)) as Parameters<typeof openLoan>[1];
    return await openLoan(viewer, input, idempotencyKey(request));
  }, 201);
}
