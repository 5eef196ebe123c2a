import { AppError } from '#common/app-error'
import { contentDisposition } from '#exchange/content-disposition'
import type { ExportedFile } from '#server/export-file'
import { logRefusal } from '#server/log-refusal'

/** A file to take away. What is not there and what is not the viewer's look the same. */
export async function fileResponse(loading: Promise<ExportedFile>): Promise<Response> {
  try {
    const file = await loading
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
