import 'server-only'

/** One line of plain text, not to be kept: for programs that look after this one. */
export function shortAnswer(status: number, text: string): Response {
  return new Response(`${text}\n`, {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
  })
}
