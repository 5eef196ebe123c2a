/** @type {import('next').NextConfig} */
const config = {
  poweredByHeader: false,
  // `npm test` checks types, tests included; a start has no need to do it again.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: ['pg'],
  // The season log of a whole club can be some megabytes; anything larger is refused by the action itself.
  experimental: { serverActions: { bodySizeLimit: '12mb' } },
}

export default config
