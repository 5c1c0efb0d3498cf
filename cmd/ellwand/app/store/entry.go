package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// format of an entry. It changes when a field goes or means another thing; entries of
// another format count as none.
const format = 1

// Limits of an entry [source.OwnChoice]: seven lays, pieces as many as a lay may
// have, and searches as many as somebody tries seeds.
const (
	mostPieces   = 20_000
	mostSearches = 1000
	mostName     = 1000
	farthest     = 1e7 // mm
)

// Search is what a search depends on beside its problem.
type Search struct {
	Seed   uint64 `json:"seed"`
	Effort string `json:"effort"`
	Passes int    `json:"passes"`
}

// Entry is what is kept of a problem: the shortest layout known of each lay, and the
// searches that were made.
type Entry struct {
	searched []Search
	lays     []keptLay
}

type file struct {
	Format int `json:"format_version"`
	// Sum finds out what has changed by accident: a layout with a changed number may
	// be one still, but longer than what was found.
	Sum      string    `json:"sum"`
	Searched []Search  `json:"searched"`
	Lays     []keptLay `json:"lays"`
}

// sumOf everything but the sum.
func sumOf(in file) string {
	in.Sum = ""
	text, err := json.Marshal(in)
	if err != nil {
		return "none"
	}
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:])
}

type keptLay struct {
	Lay      string  `json:"lay"`
	FoldedIn float64 `json:"folded_in_mm"`
	Pieces   []piece `json:"pieces"`
}

type piece struct {
	Name     string  `json:"name"`
	Garment  string  `json:"garment"`
	Size     string  `json:"size"`
	Part     int     `json:"part"`
	OnFold   bool    `json:"on_fold"`
	Mirrored bool    `json:"mirrored"`
	Turn     float64 `json:"turn_deg"`
	X        float64 `json:"x_mm"`
	Y        float64 `json:"y_mm"`
}

var errNoEntry = errors.New("this is no entry of the store")

// Parse reads an entry strictly. Every number of it is within bounds; whether it is a
// layout is not known before it has been laid again.
func Parse(data []byte) (Entry, error) {
	if len(data) > mostBytes {
		return Entry{}, errNoEntry
	}
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	var in file
	if err := decoder.Decode(&in); err != nil {
		return Entry{}, fmt.Errorf("%w: %w", errNoEntry, err)
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return Entry{}, errNoEntry
	}
	if in.Format != format || in.Sum != sumOf(in) || len(in.Searched) > mostSearches || len(in.Lays) > len(lay.Kinds()) {
		return Entry{}, errNoEntry
	}
	for _, l := range in.Lays {
		if !l.isSound() {
			return Entry{}, errNoEntry
		}
	}
	return Entry{in.Searched, in.Lays}, nil
}

func (l keptLay) isSound() bool {
	if _, ok := kindNamed(l.Lay); !ok || len(l.Pieces) == 0 || len(l.Pieces) > mostPieces {
		return false
	}
	if !(l.FoldedIn >= 0 && l.FoldedIn < farthest) {
		return false
	}
	for _, p := range l.Pieces {
		near := math.Abs(p.X) < farthest && math.Abs(p.Y) < farthest && math.Abs(p.Turn) <= 360
		if !near || p.Part < 0 || p.Part > 1 || len(p.Name)+len(p.Garment)+len(p.Size) > mostName {
			return false
		}
	}
	return true
}

func kindNamed(name string) (lay.Kind, bool) {
	for _, kind := range lay.Kinds() {
		if kind.String() == name {
			return kind, true
		}
	}
	return 0, false
}

// Has reports whether a search is among those that were made.
func (e Entry) Has(by Search) bool { return slices.Contains(e.searched, by) }

// IsOnlyOf reports whether no other search was made.
func (e Entry) IsOnlyOf(by Search) bool {
	return !slices.ContainsFunc(e.searched, func(other Search) bool { return other != by })
}

// Plans are the layouts, as plan.Bare gives them.
func (e Entry) Plans() []lay.Plan {
	var out []lay.Plan
	for _, l := range e.lays {
		kind, _ := kindNamed(l.Lay)
		bare := lay.Plan{Lay: kind, FoldedIn: l.FoldedIn}
		for _, p := range l.Pieces {
			bare.Pieces = append(bare.Pieces, lay.Laid{
				Name: p.Name, Garment: p.Garment, Size: p.Size, Part: p.Part, OnFold: p.OnFold, Mirrored: p.Mirrored,
				Turn: p.Turn, X: p.X, Y: p.Y,
			})
		}
		out = append(out, bare)
	}
	return out
}

// with adds plans and the search that found them. A plan found takes the place of the
// kept one, from which its search began: either that is no longer than the kept one,
// or the kept one was no layout.
func (e Entry) with(found []lay.Plan, by *Search) Entry {
	out := Entry{searched: e.searched}
	if by != nil && !e.Has(*by) && len(e.searched) < mostSearches {
		out.searched = append(slices.Clone(e.searched), *by)
	}
	for _, p := range found {
		out.lays = append(out.lays, keptOf(p))
	}
	for _, l := range e.lays { // lays that were not asked this time
		if !slices.ContainsFunc(out.lays, func(other keptLay) bool { return other.Lay == l.Lay }) {
			out.lays = append(out.lays, l)
		}
	}
	return out
}

func keptOf(p lay.Plan) keptLay {
	bare := plan.Bare(p)
	out := keptLay{Lay: bare.Lay.String(), FoldedIn: bare.FoldedIn}
	for _, l := range bare.Pieces {
		out.Pieces = append(out.Pieces, piece{l.Name, l.Garment, l.Size, l.Part, l.OnFold, l.Mirrored, l.Turn, l.X, l.Y})
	}
	return out
}

func (e Entry) write(w io.Writer) error {
	out := file{Format: format, Searched: e.searched, Lays: e.lays}
	out.Sum = sumOf(out)
	return json.NewEncoder(w).Encode(out)
}
