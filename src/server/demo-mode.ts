import 'server-only'

/** Whether demo clubs may be looked into. Set by the start, unless the installation wants none. */
export function isDemoMode(): boolean {
  return process.env.TURNBOOK_DEMO === '1'
}
