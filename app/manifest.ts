import type { MetadataRoute } from 'next'

export default function manifest(): MetadataRoute.Manifest {
  return {
    id: '/card',
    name: 'The card · Daybook',
    short_name: 'The card',
    description: 'A golf group’s card, hole by hole, with a signal or without.',
    start_url: '/card',
    scope: '/',
    display: 'standalone',
    background_color: '#f6f1e5',
    theme_color: '#f6f1e5',
    lang: 'en-GB',
    icons: [
      { src: '/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/icon-512.png', sizes: '512x512', type: 'image/png' },
    ],
  }
}
