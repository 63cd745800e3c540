'use client'

import type { PrizeDraft } from './drafts'
import type { DivisionDraft } from './more-draft'

interface Props {
  readonly at: string
  readonly prizes: readonly PrizeDraft[]
  readonly divisions: readonly DivisionDraft[]
  readonly onChange: (prizes: readonly PrizeDraft[]) => void
  readonly onAdd: () => void
}

export function PrizeFields({ at, prizes, divisions, onChange, onAdd }: Props) {
  const put = (place: number, prize: PrizeDraft) =>
    onChange(prizes.map((one, index) => (index === place ? prize : one)))
  return (
    <div className="prizes">
      {prizes.length > 0 ? (
        <div className="scroll" role="group" aria-label="Prizes">
          <table>
            <caption className="unseen">Prizes</caption>
            <thead>
              <tr>
                <th scope="col">Prize</th>
                <th scope="col">Place</th>
                <th scope="col">Falls to</th>
                {divisions.length > 0 ? <th scope="col">Among</th> : null}
                <th scope="col">Value, £</th>
                <th scope="col">
                  <span className="unseen">Leave out</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {prizes.map((prize, index) => (
                <tr key={prize.key}>
                  <td>
                    <input
                      className="cell"
                      name={`${at}.prizes[${index}].name`}
                      aria-label={`Prize ${index + 1}`}
                      value={prize.name}
                      maxLength={80}
                      onChange={(event) => put(index, { ...prize, name: event.target.value })}
                    />
                  </td>
                  <td>
                    <input
                      className="cell fig narrow"
                      name={`${at}.prizes[${index}].place`}
                      aria-label={`Place that wins prize ${index + 1}`}
                      type="number"
                      min={1}
                      max={50}
                      value={prize.place}
                      onChange={(event) => put(index, { ...prize, place: Number(event.target.value) })}
                    />
                  </td>
                  <td>
                    <select
                      className="cell"
                      name={`${at}.prizes[${index}].eligible`}
                      aria-label={`Who may win prize ${index + 1}`}
                      value={prize.eligible}
                      onChange={(event) =>
                        put(index, { ...prize, eligible: event.target.value as PrizeDraft['eligible'] })
                      }
                    >
                      <option value="members">members</option>
                      <option value="everybody">everybody</option>
                      <option value="guests">guests</option>
                    </select>
                  </td>
                  {divisions.length > 0 ? (
                    <td>
                      <select
                        className="cell"
                        name={`${at}.prizes[${index}].division`}
                        aria-label={`Division of prize ${index + 1}`}
                        value={divisions.some((one) => one.id === prize.division) ? prize.division : ''}
                        onChange={(event) => put(index, { ...prize, division: event.target.value })}
                      >
                        <option value="">the whole field</option>
                        {divisions.map((one) => (
                          <option key={one.key} value={one.id}>
                            {one.name || 'a division'}
                          </option>
                        ))}
                      </select>
                    </td>
                  ) : null}
                  <td>
                    <input
                      className="cell fig narrow"
                      name={`${at}.prizes[${index}].valuePence`}
                      aria-label={`Value of prize ${index + 1} in pounds`}
                      inputMode="decimal"
                      value={prize.value}
                      onChange={(event) => put(index, { ...prize, value: event.target.value })}
                    />
                  </td>
                  <td>
                    <button
                      type="button"
                      className="btn plain"
                      aria-label={`Leave out prize ${index + 1}, ${prize.name}`}
                      onClick={() => onChange(prizes.filter((one) => one !== prize))}
                    >
                      Leave out
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ) : null}
      <p className="acts">
        <button type="button" className="btn plain" onClick={onAdd}>
          {prizes.length === 0 ? 'Add a prize' : 'Add another prize'}
        </button>
      </p>
      {prizes.some((prize) => prize.value !== '') ? (
        <p className="small second">
          The value is only text on the sheet: nothing is paid or taken here. In a handicap competition an amateur may
          not accept cash, and other prizes only up to a limit (Rules of Amateur Status, Rule 3); cash and sweeps may
          touch amateur status. Give vouchers, goods or credit, and check the limit of your association.
        </p>
      ) : null}
    </div>
  )
}
