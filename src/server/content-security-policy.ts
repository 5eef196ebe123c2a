import 'server-only'

/**
 * What a page may load and do, by W3C Content Security Policy 3. Scripts run only with the number that was made for
 * this one answer, and whatever those load; the solver at the pitch is WebAssembly. Bars are drawn by style attributes,
 * which can load nothing by themselves here.
 */
export function contentSecurityPolicy({
  nonce,
  isHttps,
}: {
  readonly nonce: string
  readonly isHttps: boolean
}): string {
  const directives = {
    'default-src': "'self'",
    'script-src': `'self' 'nonce-${nonce}' 'strict-dynamic' 'wasm-unsafe-eval'`,
    'style-src': `'self' 'nonce-${nonce}'`,
    'style-src-attr': "'unsafe-inline'",
    'img-src': "'self' data:",
    'font-src': "'self'",
    'connect-src': "'self'",
    'worker-src': "'self'",
    'manifest-src': "'self'",
    'object-src': "'none'",
    'frame-src': "'none'",
    'frame-ancestors': "'none'",
    'base-uri': "'none'",
    'form-action': "'self'",
    ...(isHttps && { 'upgrade-insecure-requests': '' }),
  }
  return Object.entries(directives)
    .map(([name, sources]) => `${name} ${sources}`.trim())
    .join('; ')
}
