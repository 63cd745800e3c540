// Names that the page and the background worker share.

/** Link of the group whose facts have changed, between the tabs and the worker of one phone. */
export const CHANNEL = 'daybook-card'
/** Said on the same channel when the server has answered one of them: there is a way through. No link looks like it. */
export const REACHED = '*reached'
/** What the browser calls the background sending by. */
export const SYNC_TAG = 'daybook-card-facts'
/** Message from the page to the worker: keep this page and everything it is made of. */
export interface KeepPage {
  readonly kind: 'keep-page'
  readonly page: string
  readonly files: readonly string[]
}
/** Stands in the card's pages: what does not carry it is not a page of ours and is never kept. */
export const OUR_PAGE = 'data-daybook-card'
/** Where the worker keeps the card's pages. A page is put there last, when everything it is made of is here. */
export const PAGES = 'daybook-card-pages'
/** What the home screen opens: the cards on this phone, and the way to another. */
export const HOME_PAGE = '/card'
