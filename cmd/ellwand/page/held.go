package page

import (
	"cmp"
	"reflect"
	"slices"
	"sync"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/view"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
	"ellwand/pieces/language"
)

// held is the layout of a spot that pages see, on which a hand may move its pieces.
type held struct {
	text string // of the job
	question
	plan  lay.Plan
	shown view.Layout

	mutex sync.Mutex
	bench *plan.Bench
}

// onBench spreads the cloth for moving pieces, once.
func (h *held) onBench(tables *nest.Tables) (*plan.Bench, error) {
	if h.bench != nil {
		return h.bench, nil
	}
	var err error
	h.bench, err = plan.NewBench(h.cloth, h.work.PiecesOf(h.cloth.Name), h.plan, tables)
	return h.bench, err
}

// named is the index of a piece; -1 where there is none.
func (h *held) named(id string) int { return named(h.plan.Pieces, id) }

func named(all []lay.Laid, id string) int {
	return slices.IndexFunc(all, func(l lay.Laid) bool { return view.ID(l) == id })
}

// look at a piece that is held elsewhere.
func (h *held) look(at int, p desk.Placing, slide bool, tables *nest.Tables,
	reader language.Language) (view.Look, error) {
	h.mutex.Lock()
	defer h.mutex.Unlock()
	bench, err := h.onBench(tables)
	if err != nil {
		return view.Look{}, err
	}
	found, err := bench.Look(h.plan.Pieces, at, h.over(bench, at, p), slide)
	return view.LookOf(h.work, h.plan, at, found, reader), err
}

// heldAs is a piece as a hand holds it: what is not said of it is as it lies.
func heldAs(l lay.Laid, p desk.Placing) lay.Laid {
	if p.At != nil {
		l.X, l.Y = p.At[0], p.At[1]
	}
	if p.Turn != nil {
		l.Turn = *p.Turn
	}
	if p.Mirrored != nil {
		l.Mirrored = *p.Mirrored
	}
	if p.OnFold != nil {
		l.OnFold = *p.OnFold
	}
	return l
}

// over is a piece as a hand holds it, on the part of the lay that is said, or else on the
// one that it is held over.
func (h *held) over(bench *plan.Bench, at int, p desk.Placing) lay.Laid {
	l := heldAs(h.plan.Pieces[at], p)
	switch {
	case p.OnOpen == nil:
		l.Bed = bench.PartAt(h.plan.Pieces, at, l)
	case *p.OnOpen && len(h.plan.Beds) > 1:
		l.Bed = 1
	default:
		l.Bed = 0
	}
	return l
}

// laid is a piece as it lies where a hand puts it, on its part if it stays there, and the
// pieces that a hand has laid and that do not lie by themselves then, by their IDs.
func (h *held) laid(at int, p desk.Placing, stays bool, tables *nest.Tables) (lay.Laid, []string, error) {
	h.mutex.Lock()
	defer h.mutex.Unlock()
	all, l := h.plan.Pieces, heldAs(h.plan.Pieces[at], p)
	if stays {
		return l, nil, nil
	}
	bench, err := h.onBench(tables)
	if err != nil {
		return l, nil, nil // it is drawn where it lies, and the search says why not
	}
	to := h.over(bench, at, p)
	if to.Bed == l.Bed {
		return l, nil, nil
	}
	found, err := bench.Look(all, at, to, false)
	if err != nil || found.Bed == l.Bed {
		return l, nil, err
	}
	var goes []string
	for _, i := range bench.Goes(all, at) {
		if all[i].ByHand {
			goes = append(goes, view.ID(all[i]))
		}
	}
	return found.Laid, goes, nil
}

// staysUnderHand says that pieces which a hand has laid stay in view though the cloth has
// changed, even where it cannot be laid so: they may be moved until it can.
func (h *held) staysUnderHand(q question) bool {
	name := q.cloth.Name
	return len(plan.HandLays(q.cloth, []lay.Kind{q.kind})) > 0 &&
		reflect.DeepEqual(h.work.PiecesOf(name), q.work.PiecesOf(name))
}

// movedByHand is the layout with the pieces where the job now says that a hand has laid
// them, all others where they lay. It reports false where that cannot be drawn.
func (h *held) movedByHand(q question, state desk.State, tables *nest.Tables) (*held, bool) {
	out := &held{text: state.Text, question: q, plan: h.plan}
	if h.plan.Lay != q.kind {
		return nil, false
	}
	all := slices.Clone(h.plan.Pieces)
	for i := range all {
		all[i].ByHand = false
	}
	for _, hand := range plan.HandLays(q.cloth, []lay.Kind{q.kind}) {
		out.plan.FoldedIn = hand.FoldedIn
		all = h.withPieces(all, hand.Pieces, tables)
	}
	slices.SortStableFunc(all, func(a, b lay.Laid) int { return cmp.Compare(a.Copy, b.Copy) })
	out.plan.Pieces = all
	bench, err := out.onBench(tables)
	if err != nil {
		return nil, false
	}
	moved, proven := bench.Plan(all)
	out.plan = moved
	out.shown = view.LayoutOf(q.work, app.Planned{Plan: moved}, state.Revision)
	out.shown.Width, out.shown.Lay, out.shown.Verified = q.Width, q.Lay, proven
	return out, true
}

// withPieces are all with some where a hand has laid them. One that is on the other part
// takes its copies along.
func (h *held) withPieces(all, byHand []lay.Laid, tables *nest.Tables) []lay.Laid {
	h.mutex.Lock()
	defer h.mutex.Unlock()
	bench, failed := h.onBench(tables)
	for _, piece := range byHand {
		i := named(all, view.ID(piece))
		if i < 0 {
			continue
		}
		if failed == nil && piece.Bed != all[i].Bed {
			if over, lying, err := bench.Across(all, i, piece); err == nil {
				bench, all = over, lying
				i = named(all, view.ID(piece))
			}
		}
		all[i].X, all[i].Y, all[i].Turn = piece.X, piece.Y, piece.Turn
		all[i].Mirrored, all[i].OnFold, all[i].Bed = piece.Mirrored, piece.OnFold, piece.Bed
	}
	return all
}
