package job

import (
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// byHand are the pieces that a hand has laid on a cloth.
func (r *resolver) byHand(path Path, name string, all []HandLaid) []cloth.HandLaid {
	var out []cloth.HandLaid
	for i, one := range all {
		at := path.Entry(i)
		before := len(r.faults.List)
		laid := cloth.HandLaid{Lay: int(choose(r.values, at.Key("lay"), name+": the lay", one.Lay))}
		isKnown := len(r.faults.List) == before
		laid.Width, _ = r.positive(at.Key("width"), name+": the width that was laid by hand", one.Width)
		for k, piece := range one.Pieces {
			laid.Pieces = append(laid.Pieces, r.handPiece(at.Key("pieces").Entry(k), name, piece))
		}
		if isKnown {
			laid.FoldedIn = r.foldedIn(at, name, lay.Kind(laid.Lay), one)
			r.partsThere(at, name, lay.Kind(laid.Lay), laid.Pieces)
		}
		out = append(out, laid)
	}
	return out
}

// foldedIn is how far a selvedge is folded in where pieces were laid by hand; 0 in the lays
// that fold none in.
func (r *resolver) foldedIn(at Path, name string, kind lay.Kind, one HandLaid) float64 {
	path := at.Key("folded_in")
	switch {
	case kind != lay.SelvedgeIn && one.FoldedIn != "":
		r.fault(path, strict.OutOfRange, "%s: folded_in is only for the lay %q; take it away", name, lay.SelvedgeIn)
	case kind == lay.SelvedgeIn && one.FoldedIn == "":
		r.fault(at, strict.Missing, "%s: how far the selvedge is folded in, where pieces were laid by hand, is missing; "+
			"add folded_in:", name)
	case kind == lay.SelvedgeIn:
		depth, _ := r.positive(path, name+": how far the selvedge is folded in", one.FoldedIn)
		return depth
	}
	return 0
}

// partsThere refuses pieces on an open part in lays that have none.
func (r *resolver) partsThere(at Path, name string, kind lay.Kind, all []cloth.HandPiece) {
	if kind == lay.SelvedgeIn || kind == lay.InStretches {
		return
	}
	for k, piece := range all {
		if piece.OnOpen {
			r.fault(at.Key("pieces").Entry(k).Key("on_open"), strict.OutOfRange,
				"%s: on_open is only for a lay of two parts, and %q is of one; take it away", name, kind)
		}
	}
}

func (r *resolver) handPiece(path Path, name string, p HandPiece) cloth.HandPiece {
	out := cloth.HandPiece{Name: string(p.Piece), Garment: string(p.Garment), Size: string(p.Size),
		Copy: r.count(path.Key("copy"), name+": the copy", p.Copy)}
	if p.Piece == "" {
		r.fault(path, strict.Missing, "%s: a piece that was laid by hand has no name; add piece:", name)
	}
	if len(p.At) != 2 {
		r.fault(path.Key("at"), strict.Malformed, "%s: where %s was laid must be two distances, along and across: [40, 30]",
			name, quoted(p.Piece))
	} else {
		x, _ := r.Signed(path.Key("at"), name, p.At[0])
		y, _ := r.Signed(path.Key("at"), name, p.At[1])
		out.At = orb.Point{x, y}
	}
	if p.Turn != "" {
		turn, err := strconv.ParseFloat(string(p.Turn), 64)
		if err != nil || !(turn >= 0 && turn < 360) {
			r.fault(path.Key("turn"), strict.OutOfRange, "%s: the turn of %s is %q; it must be from 0 to below 360 degrees",
				name,
				quoted(p.Piece), string(p.Turn))
		}
		out.Turn = turn
	}
	out.FaceDown = r.yes(path.Key("face_down"), name+": face_down", p.FaceDown)
	out.OnFold = r.yes(path.Key("on_fold"), name+": on_fold", p.OnFold)
	out.OnOpen = r.yes(path.Key("on_open"), name+": on_open", p.OnOpen)
	return out
}

// handLaidThere drops what was laid by hand of pieces that the job does not have any
// more, and says so.
func (r *resolver) handLaidThere() {
	if len(r.faults.List) > 0 {
		return
	}
	for i := range r.work.Cloths {
		offer := &r.work.Cloths[i]
		sources := lay.SourcesIn(r.work.PiecesOf(offer.Cloth.Name))
		var kept []cloth.HandLaid
		for _, one := range offer.Cloth.ByHand {
			var there []cloth.HandPiece
			for _, piece := range one.Pieces {
				if sources.Of(lay.Laid{Name: piece.Name, Garment: piece.Garment, Size: piece.Size}) < 0 {
					r.work.note("the piece " + strconv.Quote(piece.Name) + " was laid by hand on cloth " +
						strconv.Quote(offer.Cloth.Name) + ", and is none of its pieces any more; it is left out there")
					continue
				}
				there = append(there, piece)
			}
			one.Pieces = there
			kept = append(kept, one)
		}
		offer.Cloth.ByHand = kept
		for k := range offer.Offers {
			offer.Offers[k].Cloth.ByHand = kept
		}
	}
}
