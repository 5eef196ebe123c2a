import { NextResponse } from 'next/server'
import { codeOfText, textOfCode } from '#server/link-code'
import { welcomeCookie } from '#server/welcome-cookie'

type Asked = { readonly params: Promise<{ readonly code: string }> }

/**
 * Takes the code out of the address and leads on to the page that says what it is for. Nothing is looked up and nothing
 * changes: programs that look through mails open every link.
 */
export async function GET(_request: Request, { params }: Asked): Promise<NextResponse> {
  const code = codeOfText((await params).code)
  const { name, attributes } = welcomeCookie()
  const answer = new NextResponse(null, {
    status: 303,
    headers: { Location: '/welcome', 'Referrer-Policy': 'no-referrer', 'Cache-Control': 'no-store' },
  })
  if (code) answer.cookies.set(name, textOfCode(code), attributes)
  else answer.cookies.delete(name)
  return answer
}
