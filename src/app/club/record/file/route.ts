import { fileResponse } from '#app/file-response'
import { loadRecordFile } from '#server/record-views'
import { getViewer } from '#server/viewer'

/** The record of changes and looks as a file. */
export async function GET(request: Request): Promise<Response> {
  const viewer = await getViewer()
  const query = Object.fromEntries(new URL(request.url).searchParams)
  return fileResponse(loadRecordFile(viewer, { query }))
}
