// What a phone has of the card before its signal goes.

import { expect, type Page } from '@playwright/test'

/**
 * Until the background worker has this page, the page of the home screen, and all they are made of: from here on no
 * signal is needed. Asked again and again from here, since a wait inside the page takes a promise for a yes.
 */
export async function untilKept(page: Page): Promise<void> {
  const wanted = [new URL(page.url()).pathname, '/card']
  const kept = () =>
    page.evaluate(async () => {
      const pages = await (await caches.open('daybook-card-pages')).keys()
      return pages.map((each) => new URL(each.url).pathname)
    })
  await expect.poll(kept).toEqual(expect.arrayContaining(wanted))
}
