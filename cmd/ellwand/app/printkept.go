package app

import (
	"context"
	"strconv"

	"ellwand/cmd/ellwand/app/packing"
	"ellwand/cmd/ellwand/app/store"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/pieces/paper"
	"ellwand/pieces/sheet"
)

// keptPacking is what the store has of full-size pieces on a paper.
type keptPacking struct {
	ctx   context.Context
	store *store.Store
	key   string
	entry store.Entry
	by    store.Search
}

func packingKept(ctx context.Context, figures []sheet.DrawnPiece, sheetPaper paper.Paper, search Search) keptPacking {
	outlines := make([]any, 0, len(figures)+1)
	outlines = append(outlines, sheetPaper)
	for _, f := range figures {
		outlines = append(outlines, f.Around())
	}
	out := keptPacking{
		ctx: ctx, store: newFinder(search).store, key: store.Key(cloth.Cloth{}, nil, outlines...),
		by: store.Search{Seed: search.Seed, Effort: "print " + search.Effort.String(), Passes: search.Passes},
	}
	out.entry = out.store.Read(out.key)
	return out
}

// arrangement that the same search found before; nil where it was not made.
func (k keptPacking) arrangement() *packing.Arrangement {
	plans := k.entry.Plans()
	if !k.entry.Has(k.by) || !k.entry.IsOnlyOf(k.by) || len(plans) != 1 {
		return nil
	}
	out := &packing.Arrangement{Columns: int(plans[0].FoldedIn)}
	for _, l := range plans[0].Pieces {
		item, err := strconv.Atoi(l.Name)
		if err != nil {
			return nil
		}
		out.Turned = l.Mirrored
		out.Placements = append(out.Placements, layout.Placement{Item: item, Turn: int(l.Turn), X: l.X, Y: l.Y})
	}
	return out
}

// found keeps how pieces were packed, in the place of what another search found: fewer
// sheets are not told by a length.
func (k keptPacking) found(a packing.Arrangement) {
	if k.ctx.Err() != nil {
		return
	}
	if len(k.entry.Plans()) > 0 {
		k.store.Drop(k.key)
	}
	kept := lay.Plan{Lay: lay.Open, FoldedIn: float64(a.Columns)}
	for _, at := range a.Placements {
		kept.Pieces = append(kept.Pieces, lay.Laid{
			Name: strconv.Itoa(at.Item), Mirrored: a.Turned, Turn: float64(at.Turn), X: at.X, Y: at.Y,
		})
	}
	k.store.Add(k.key, k.store.Read(k.key), store.Found{Plans: []lay.Plan{kept}, By: &k.by})
}
