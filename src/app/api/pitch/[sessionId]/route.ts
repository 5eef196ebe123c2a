import { answerBatch, answerPack } from '#server/pitch-door'

type Context = { readonly params: Promise<{ readonly sessionId: string }> }

/** Everything a phone needs to run one practice: see `PitchPack` of #pitch/pitch-pack. */
export async function GET(_request: Request, { params }: Context): Promise<Response> {
  return answerPack((await params).sessionId)
}

/** What was tapped, taken in, and what others tapped since: see `PitchBatch` and `PitchAnswer`. */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  return answerBatch(request, (await params).sessionId)
}
