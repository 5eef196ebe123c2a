/** @type {import('next').NextConfig} */
const config = {
  poweredByHeader: false,
  serverExternalPackages: ['pg'],
  // The season log of a whole club can be some megabytes; anything larger is refused by the action itself.
  experimental: { serverActions: { bodySizeLimit: '12mb' } },
}

export default config
