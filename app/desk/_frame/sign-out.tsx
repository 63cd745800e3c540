import { leaveDesk } from '@/app/sign-in/actions'

export function SignOut() {
  return (
    <form action={leaveDesk}>
      <button type="submit" className="btn plain">
        Sign out
      </button>
    </form>
  )
}
