import { answerCalendar } from '#server/calendar-door'

type Asked = { readonly params: Promise<{ readonly code: string }> }

/** A person's calendar, for a program that has its address. */
export async function GET(request: Request, { params }: Asked): Promise<Response> {
  return answerCalendar(request, (await params).code)
}
