package plan

// Effort is how much work goes into a search, counted in passes, so that it is the
// same on any machine, busy or not.
type Effort int

const (
	// Usual effort is for an answer.
	Usual Effort = iota
	// Quick is for a first look: a fifth of the usual.
	Quick
	// Long is for a cut that is worth waiting for: ten times the usual.
	Long
)

// efforts in the order of the constants [source.OwnChoice].
var efforts = []struct {
	name  string
	times float64
}{{"usual", 1}, {"quick", 0.2}, {"long", 10}}

// String gives "usual", "quick" or "long".
func (e Effort) String() string { return efforts[e].name }

// EffortNamed is the effort of that name; false when there is none.
func EffortNamed(name string) (Effort, bool) {
	for i, e := range efforts {
		if e.name == name {
			return Effort(i), true
		}
	}
	return 0, false
}

// Efforts from the least to the most.
func Efforts() []Effort { return []Effort{Quick, Usual, Long} }

// The usual effort of a lay: passes for each piece to be cut, and more for each of those
// that are many, within limits, at most. On the example jobs it comes within the shares of
// the shortest lengths known that testdata/lengths.csv records; without the more, four
// dresses of 36 pieces were up to 5 % over it, with it 3.4 %, for a tenth more time
// [source.OwnChoice].
const (
	passesOfAPiece = 150
	manyPieces     = 20
	moreOfMany     = 250
	leastPasses    = 1500
	mostPasses     = 9000
)

// patience of a search that has no exact budget: it ends when the next gain has not
// come after twice the passes that the last took to come
// [source.OwnChoice].
const patience = 2

// passes of the search of a lay for so many pieces.
func (e Effort) passes(pieces int) int {
	asked := passesOfAPiece*pieces + moreOfMany*max(0, pieces-manyPieces)
	usual := min(max(leastPasses, asked), mostPasses)
	return e.Of(usual)
}

// Of is how many passes make this effort where so many make the usual.
func (e Effort) Of(usual int) int { return max(1, int(efforts[e].times*float64(usual))) }

// Work counts the passes of searches.
type Work struct {
	// Due are the passes that were allowed, Made those up to which they got. A search
	// that ended by itself made all.
	Due, Made int
}

// Done is the share that was made, 0 to 1; 1 when nothing was due.
func (w Work) Done() float64 {
	if w.Due == 0 {
		return 1
	}
	return float64(w.Made) / float64(w.Due)
}

// Plus adds the work of other searches.
func (w Work) Plus(more Work) Work { return Work{w.Due + more.Due, w.Made + more.Made} }
