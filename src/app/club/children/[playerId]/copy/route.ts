import { AppError } from '#common/app-error'
import { contentDisposition } from '#exchange/content-disposition'
import { loadChildFile } from '#server/child-views'
import { getViewer } from '#server/viewer'

type Context = { readonly params: Promise<{ readonly playerId: string }> }

/** All that is kept about one child, as a file. What is not there and what is not the viewer's look the same. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const viewer = await getViewer()
  const { playerId } = await params
  const forId = new URL(request.url).searchParams.get('for')
  try {
    const file = await loadChildFile(viewer, { playerId, forId })
    return new Response(file.text, {
      headers: {
        'content-type': 'application/json',
        'content-disposition': contentDisposition(file.fileName),
        'cache-control': 'private, no-store',
        'x-content-type-options': 'nosniff',
      },
    })
  } catch (error) {
    if (!(error instanceof AppError)) throw error
    return new Response('There is no such file.', {
      status: 404,
      headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
    })
  }
}
