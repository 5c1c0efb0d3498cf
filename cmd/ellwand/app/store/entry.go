package store

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces/marks"
)

// Limits of an entry [source.OwnChoice]: seven lays, pieces as many as a lay may
// have, and searches as many as somebody tries seeds.
const (
	mostPieces   = 20_000
	mostSearches = 1000
	mostName     = 1000
	farthest     = 1e7 // mm
)

// Entry is what is kept of a problem: the shortest layout known of each lay, and the
// searches that were made.
type Entry struct {
	searched []Search
	lays     []keptLay
}

var errNoEntry = errors.New("this is no entry of the store")

// parse reads an entry strictly. Every number of it is within bounds, and it was signed;
// whether it is a layout is not known before it has been laid again.
func (s signer) parse(data []byte) (Entry, error) {
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
	if in.Format != format || !s.hasSigned(in) || len(in.Searched) > mostSearches || len(in.Lays) > 2*len(lay.Kinds()) {
		return Entry{}, errNoEntry
	}
	for _, l := range in.Lays {
		if !l.isValid() {
			return Entry{}, errNoEntry
		}
	}
	return Entry{in.Searched, in.Lays}, nil
}

func (l keptLay) isValid() bool {
	if _, ok := kindNamed(l.Lay); !ok || len(l.Pieces) == 0 || len(l.Pieces) > mostPieces {
		return false
	}
	if !(l.FoldedIn >= 0 && l.FoldedIn < farthest) || !areValid(l.Along) || !areValid(l.Across) {
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

// areValid are the places of match points that are within bounds.
func areValid(places []place) bool {
	for _, one := range places {
		if len(one.Name) > mostName || !(math.Abs(one.At) < farthest) {
			return false
		}
	}
	return len(places) <= mostPieces
}

// placesFrom what is kept of one direction.
func placesFrom(kept []place) map[lay.Node]float64 {
	if len(kept) == 0 {
		return nil
	}
	out := map[lay.Node]float64{}
	for _, one := range kept {
		out[lay.Node{Kind: lay.NodeKind(one.Kind), Index: one.Index, Name: marks.Called(one.Name)}] = one.At
	}
	return out
}

// keptPlaces in an order of their own, so that equal ones give equal bytes.
func keptPlaces(places map[lay.Node]float64) []place {
	var out []place
	for node, at := range places {
		out = append(out, place{uint8(node.Kind), node.Index, node.Name.String(), at})
	}
	slices.SortFunc(out, func(a, b place) int {
		return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Index, b.Index), cmp.Compare(a.Name, b.Name))
	})
	return out
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

// IsOnlyOf reports whether no other search was made than some.
func (e Entry) IsOnlyOf(some ...Search) bool {
	return !slices.ContainsFunc(e.searched, func(other Search) bool { return !slices.Contains(some, other) })
}

// Plans are the layouts, as plan.Bare gives them.
func (e Entry) Plans() []lay.Plan { return e.plans(false) }

// Plain are those without the repeat of the cloth.
func (e Entry) Plain() []lay.Plan { return e.plans(true) }

func (e Entry) plans(onPlain bool) []lay.Plan {
	var out []lay.Plan
	for _, l := range e.lays {
		if l.OnPlain != onPlain {
			continue
		}
		kind, _ := kindNamed(l.Lay)
		bare := lay.Plan{Lay: kind, FoldedIn: l.FoldedIn, Places: lay.Places{placesFrom(l.Along), placesFrom(l.Across)}}
		for _, p := range l.Pieces {
			bare.Pieces = append(bare.Pieces, lay.Laid{
				Name: p.Name, Garment: p.Garment, Size: p.Size, Bed: p.Part, OnFold: p.OnFold, Mirrored: p.Mirrored,
				Turn: p.Turn, X: p.X, Y: p.Y,
			})
		}
		out = append(out, bare)
	}
	return out
}

// Found is what a search found.
type Found struct {
	// Plans are the layouts, and Plain those without the repeat of the cloth.
	Plans, Plain []lay.Plan
	// By is the search when it was made to its end, otherwise nil.
	By *Search
}

// with adds what a search found. A plan found takes the place of the kept one, from
// which its search began: either that is no longer than the kept one, or the kept one
// was no layout.
func (e Entry) with(found Found) Entry {
	out := Entry{searched: e.searched}
	if by := found.By; by != nil && !e.Has(*by) && len(e.searched) < mostSearches {
		out.searched = append(slices.Clone(e.searched), *by)
	}
	for _, p := range found.Plans {
		out.lays = append(out.lays, keptOf(p, false))
	}
	for _, p := range found.Plain {
		out.lays = append(out.lays, keptOf(p, true))
	}
	for _, l := range e.lays { // lays that were not asked this time
		same := func(other keptLay) bool { return other.Lay == l.Lay && other.OnPlain == l.OnPlain }
		if !slices.ContainsFunc(out.lays, same) {
			out.lays = append(out.lays, l)
		}
	}
	return out
}

func keptOf(p lay.Plan, onPlain bool) keptLay {
	bare := plan.Bare(p)
	out := keptLay{Lay: bare.Lay.String(), FoldedIn: bare.FoldedIn, OnPlain: onPlain, Along: keptPlaces(bare.Places[0]),
		Across: keptPlaces(bare.Places[1])}
	for _, l := range bare.Pieces {
		out.Pieces = append(out.Pieces, piece{l.Name, l.Garment, l.Size, l.Bed, l.OnFold, l.Mirrored, l.Turn, l.X, l.Y})
	}
	return out
}

func (e Entry) write(w io.Writer, by signer) error {
	out := file{Format: format, Searched: e.searched, Lays: e.lays}
	out.Signature = by.sign(out)
	return json.NewEncoder(w).Encode(out)
}
