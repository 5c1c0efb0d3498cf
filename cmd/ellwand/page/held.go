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
func (h *held) named(id string) int {
	return slices.IndexFunc(h.plan.Pieces, func(l lay.Laid) bool { return view.ID(l) == id })
}

// look at a piece that is held elsewhere.
func (h *held) look(at int, to lay.Laid, slide bool, tables *nest.Tables) (view.Look, error) {
	h.mutex.Lock()
	defer h.mutex.Unlock()
	bench, err := h.onBench(tables)
	if err != nil {
		return view.Look{}, err
	}
	found, err := bench.Look(h.plan.Pieces, at, to, slide)
	return view.LookOf(h.work, h.plan, found), err
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
		for _, piece := range hand.Pieces {
			if i := h.named(view.ID(piece)); i >= 0 {
				all[i].X, all[i].Y, all[i].Turn = piece.X, piece.Y, piece.Turn
				all[i].Mirrored, all[i].OnFold, all[i].Part = piece.Mirrored, piece.OnFold, piece.Part
			}
		}
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
