import { fileResponse } from '#app/file-response'
import { loadExport } from '#server/export-views'
import { getViewer } from '#server/viewer'

type Context = { readonly params: Promise<{ readonly squadId: string; readonly what: string }> }

/** A file of a squad to take away. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const viewer = await getViewer()
  const asked = new URL(request.url).searchParams
  const wish = { ...(await params), from: asked.get('from'), to: asked.get('to') }
  return fileResponse(loadExport(viewer, wish))
}
