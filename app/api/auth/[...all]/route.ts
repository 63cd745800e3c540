import { signInHandlers } from '@/lib/society/sign-in'

export const dynamic = 'force-dynamic'
export const { GET, POST } = signInHandlers
