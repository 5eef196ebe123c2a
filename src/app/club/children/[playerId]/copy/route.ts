import { fileResponse } from '#app/file-response'
import { loadChildFile } from '#server/child-views'
import { getViewer } from '#server/viewer'

type Context = { readonly params: Promise<{ readonly playerId: string }> }

/** All that is kept about one child, as a file. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const viewer = await getViewer()
  const { playerId } = await params
  const forId = new URL(request.url).searchParams.get('for')
  return fileResponse(loadChildFile(viewer, { playerId, forId }))
}
