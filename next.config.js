// Pages hold children's names: they are framed by nobody, guessed at by no browser, and named to no other site. Which
// headers, and why: OWASP Secure Headers Project, and ASVS 5.0 section 3.4. What depends on how this installation is
// reached is added where that is known: src/proxy.ts and src/boot/front-door.mjs.
const headers = {
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'same-origin',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'X-Permitted-Cross-Domain-Policies': 'none',
  'Permissions-Policy': [
    ...['camera', 'microphone', 'geolocation', 'payment', 'usb', 'serial', 'bluetooth', 'hid', 'midi'],
    ...['display-capture', 'browsing-topics', 'accelerometer', 'gyroscope', 'magnetometer'],
  ]
    .map((feature) => `${feature}=()`)
    .concat(
      'publickey-credentials-get=(self)',
      'publickey-credentials-create=(self)',
      'screen-wake-lock=(self)',
    )
    .join(', '),
  'X-Robots-Tag': 'noindex, nofollow',
}

// What is no page runs nothing but the pitch's own worker, and the solver in it.
const noPage =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'; style-src 'self'; font-src 'self'; " +
  "img-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"
const noPages =
  '(?:api|_next/static|icons|pictures|\\.well-known)/.*|sw\\.js|manifest\\.webmanifest|icon\\.svg|apple-icon\\.png'

const listed = (/** @type {Record<string, string>} */ all) =>
  Object.entries(all).map(([key, value]) => ({ key, value }))

/** @type {import('next').NextConfig} */
const config = {
  poweredByHeader: false,
  headers: async () => [
    { source: '/:path*', headers: listed(headers) },
    // What follows here opens something once: it is named to nobody, not even to our own next page.
    { source: '/welcome/:code', headers: listed({ 'Referrer-Policy': 'no-referrer' }) },
    { source: `/:path(${noPages})`, headers: listed({ 'Content-Security-Policy': noPage }) },
  ],
  // Folders that begin with a dot are passed over by half of the tools.
  rewrites: async () => [{ source: '/.well-known/security.txt', destination: '/api/security-txt' }],
  // `npm test` checks types, tests included; a start has no need to do it again.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: ['pg', 'pino'],
  experimental: {
    // The season log of a whole club can be some megabytes; anything larger is refused by the action itself.
    serverActions: { bodySizeLimit: '12mb' },
    // What is longer would reach the action cut short. The front door refuses it before that, with a sentence.
    proxyClientMaxBodySize: '13mb',
  },
}

export default config
