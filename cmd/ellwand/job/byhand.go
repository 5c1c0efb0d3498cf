package job

import (
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces/language"
)

// byHand are the pieces that a hand has laid on a cloth.
func (r *resolver) byHand(path Path, name language.Sentence, all []HandLaid) []cloth.HandLaid {
	var out []cloth.HandLaid
	for i, one := range all {
		at := path.Entry(i)
		before := len(r.faults.List)
		laid := cloth.HandLaid{Lay: int(choose(r.values, at.Key("lay"), name.Its("the lay", "Lage"), one.Lay))}
		isKnown := len(r.faults.List) == before
		laid.Width, _ = r.positive(at.Key("width"), name.Its("the width that was laid by hand",
			"Breite, in der von Hand gelegt wurde"), one.Width)
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
func (r *resolver) foldedIn(at Path, name language.Sentence, kind lay.Kind, one HandLaid) float64 {
	path := at.Key("folded_in")
	switch {
	case kind != lay.SelvedgeIn && one.FoldedIn != "":
		r.fault(path, strict.OutOfRange, "%s: folded_in is only for the lay %q; take it away",
			"%s: eine Tiefe des Einschlags hat nur die Lage %q; nehmen Sie sie weg", name, lay.SelvedgeIn)
	case kind == lay.SelvedgeIn && one.FoldedIn == "":
		r.fault(at, strict.Missing,
			"%s: how far the selvedge is folded in, where pieces were laid by hand, is missing; "+
				"add folded_in:",
			"%s: es fehlt, wie weit die Webkante eingeschlagen ist, wo Teile von Hand liegen", name)
	case kind == lay.SelvedgeIn:
		depth, _ := r.positive(path, name.Its("how far the selvedge is folded in", "Tiefe des Einschlags"),
			one.FoldedIn)
		return depth
	}
	return 0
}

// partsThere refuses pieces on an open part in lays that have none.
func (r *resolver) partsThere(at Path, name language.Sentence, kind lay.Kind, all []cloth.HandPiece) {
	if kind == lay.SelvedgeIn || kind == lay.InStretches {
		return
	}
	for k, piece := range all {
		if piece.OnOpen {
			r.fault(at.Key("pieces").Entry(k).Key("on_open"), strict.OutOfRange,
				"%s: on_open is only for a lay of two parts, and %q is of one; take it away",
				"%s: einen offenen Abschnitt hat nur eine Lage aus zwei Abschnitten, und %q hat einen; "+
					"nehmen Sie die Angabe weg", name, kind)
		}
	}
}

func (r *resolver) handPiece(path Path, name language.Sentence, p HandPiece) cloth.HandPiece {
	out := cloth.HandPiece{Name: string(p.Piece), Garment: string(p.Garment), Size: string(p.Size),
		Copy: r.count(path.Key("copy"), name.Its("the copy", "das Wievielte"), p.Copy)}
	if p.Piece == "" {
		r.fault(path, strict.Missing, "%s: a piece that was laid by hand has no name; add piece:",
			"%s: ein von Hand gelegtes Teil hat keinen Namen; nennen Sie es", name)
	}
	if len(p.At) != 2 {
		r.fault(path.Key("at"), strict.Malformed,
			"%s: where %s was laid must be two distances, along and across: [40, 30]",
			"%s: der Platz von %s sind zwei Abstände, längs und quer: [40, 30]",
			name, quoted(p.Piece))
	} else {
		x, _ := r.Signed(path.Key("at"), name, p.At[0])
		y, _ := r.Signed(path.Key("at"), name, p.At[1])
		out.At = orb.Point{x, y}
	}
	if p.Turn != "" {
		turn, err := strconv.ParseFloat(string(p.Turn), 64)
		if err != nil || !(turn >= 0 && turn < 360) {
			r.fault(path.Key("turn"), strict.OutOfRange,
				"%s: the turn of %s is %q; it must be from 0 to below 360 degrees",
				"%s: %s ist um %q gedreht; es müssen 0 bis unter 360 Grad sein",
				name,
				quoted(p.Piece), string(p.Turn))
		}
		out.Turn = turn
	}
	out.FaceDown = r.yes(path.Key("face_down"), name.Its("face_down", "Gespiegelt"), p.FaceDown)
	out.OnFold = r.yes(path.Key("on_fold"), name.Its("on_fold", "Im Bruch"), p.OnFold)
	out.OnOpen = r.yes(path.Key("on_open"), name.Its("on_open", "Auf dem offenen Abschnitt"), p.OnOpen)
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
					r.work.note(language.Say("the piece %q was laid by hand on cloth %q, and is none of its pieces any more; it is "+
						"left out there", "das Teil %q wurde auf dem Stoff %q von Hand gelegt und gehört nicht mehr dazu; es ist dort "+
						"weggelassen", piece.Name, offer.Cloth.Name))
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
