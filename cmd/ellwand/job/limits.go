package job

import (
	"strconv"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// withinMade refuses a job that makes more garments than it may, before any is
// drafted.
func (r *resolver) withinMade(wearers []wearer) bool {
	made := 0
	for i, garment := range r.file.Garments {
		quantity, err := strconv.Atoi(string(garment.Quantity))
		if err != nil { // not given, or refused where it is resolved
			quantity = 1
		}
		for _, w := range wearers {
			if wears(garment, w) {
				made += min(max(quantity, 1), strict.MostCount)
			}
		}
		if err := limit.Made.Check(language.Say("the job", "der Auftrag"), made); err != nil {
			r.Note(strict.Top("garments").Entry(i), strict.OutOfRange, language.OfError(err))
			return false
		}
	}
	return true
}

// withinLays adds the pieces of garments that are made, and refuses more of them
// than may be cut from one cloth.
func (r *resolver) withinLays(path Path, made Made) bool {
	for _, piece := range made.Pieces {
		of := r.lays[piece.Cloth]
		if of == nil {
			of = &struct{ pieces, corners int }{}
			r.lays[piece.Cloth] = of
		}
		outline, _ := piece.CuttingOutline(flatness) // a piece without one is refused elsewhere
		of.pieces += made.Quantity * piece.Cut
		of.corners += made.Quantity * piece.Cut * len(outline)
		place := language.Say("cloth %q", "Stoff %q", piece.Cloth)
		for _, err := range []error{limit.PiecesOfLay.Check(place, of.pieces), limit.CornersOfLay.Check(place, of.corners)} {
			if err != nil {
				r.Note(path, strict.OutOfRange, language.OfError(err))
				return false
			}
		}
	}
	return true
}

// flatness, mm, to which outlines are counted, about that of the lays
// [source.OwnChoice].
const flatness = 0.1
