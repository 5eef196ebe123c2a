import { AppError } from '#common/app-error'
import { contentDisposition } from '#exchange/content-disposition'
import { loadExport } from '#server/export-views'
import { logRefusal } from '#server/log-refusal'
import { getViewer } from '#server/viewer'

type Context = { readonly params: Promise<{ readonly squadId: string; readonly what: string }> }

/** A file to take away. What is not there and what is not the viewer's look the same. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const viewer = await getViewer()
  const asked = new URL(request.url).searchParams
  try {
    const wish = { ...(await params), from: asked.get('from'), to: asked.get('to') }
    const file = await loadExport(viewer, wish)
    return new Response(file.text, {
      headers: {
        'content-type': file.mediaType,
        'content-disposition': contentDisposition(file.fileName),
        'cache-control': 'private, no-store',
        'x-content-type-options': 'nosniff',
      },
    })
  } catch (error) {
    if (!(error instanceof AppError)) throw error
    logRefusal(error)
    return new Response('There is no such file.', {
      status: 404,
      headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
    })
  }
}
