// Pages hold children's names: they are framed by nobody, guessed at by no browser, and named to no other site.
const headers = Object.entries({
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Content-Security-Policy': "frame-ancestors 'none'; base-uri 'self'; form-action 'self'; object-src 'none'",
  'Referrer-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=()',
  'X-Robots-Tag': 'noindex, nofollow',
}).map(([key, value]) => ({ key, value }))

/** @type {import('next').NextConfig} */
const config = {
  poweredByHeader: false,
  headers: async () => [{ source: '/:path*', headers }],
  // `npm test` checks types, tests included; a start has no need to do it again.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: ['pg'],
  // The season log of a whole club can be some megabytes; anything larger is refused by the action itself.
  experimental: { serverActions: { bodySizeLimit: '12mb' } },
}

export default config
