import { Button } from 'react-aria-components';
import type { WallResult } from '../../../geometry/sheet/wall-result.ts';
import { areaText } from '../../../geometry/sheet/wall-text.ts';
import { useView } from '../../view/view-store.ts';
import { useChosenPart } from '../chosen-part.ts';
import { placeText } from '../wear/face-words.ts';
import { lengthText, wallState, wallTitle, worstFirst } from './wall-words.ts';

interface WallListProps {
  readonly part: string;
  readonly walls: readonly WallResult[];
  /** The one on the map. */
  readonly wall: WallResult;
  /** Of its places; the thinnest place where none is too thin. */
  readonly place: number;
  onWall(wall: WallResult): void;
  onPlace(place: number): void;
}

/** Longer lists end in a count. */
const MOST_PLACES = 12;

/** Every wall of the part, the worst first, and the thin places of the one on the map. A press shows it there. */
export function WallList({ walls, wall, place, onWall, onPlace }: WallListProps) {
  const units = useView((view) => view.units);
  const { part } = useChosenPart();
  const rest = wall.places.length - MOST_PLACES;
  return (
    <div className="wall-lists">
      <ul className="wall-list" aria-label="Walls, worst first">
        {worstFirst(walls).map((one) => (
          <li key={one.face}>
            <Button
              className="wall-row"
              aria-pressed={one === wall}
              data-lit={one === wall || undefined}
              onPress={() => onWall(one)}
            >
              <span className="wall-name">{wallTitle(one)}</span>
              <span
                className={one.verdict === 'sound' || one.verdict === 'no limit' ? undefined : 'wall-bad'}
              >
                {wallState(one, units)}
              </span>
              <span className="quiet">thinnest at {placeText(part, one.face, one.at, units)}</span>
            </Button>
          </li>
        ))}
      </ul>
      {wall.places.length > 0 && (
        <>
          <h3>Thin places of {wallTitle(wall).toLowerCase()}</h3>
          <ol className="wall-list" aria-label="Thin places">
            {wall.places.slice(0, MOST_PLACES).map(({ at, remaining, area }, i) => (
              <li key={at.join()}>
                <Button
                  className="wall-row"
                  aria-pressed={i === place}
                  data-lit={i === place || undefined}
                  onPress={() => onPlace(i)}
                >
                  <span className="wall-name">
                    {i + 1}. {remaining === 0 ? 'Worn through' : `${lengthText(remaining, units)} left`}
                  </span>
                  <span>{areaText(area)} cm²</span>
                  <span className="quiet">{placeText(part, wall.face, at, units)}</span>
                </Button>
              </li>
            ))}
          </ol>
          {rest > 0 && <p className="quiet">and {rest} more</p>}
        </>
      )}
    </div>
  );
}
