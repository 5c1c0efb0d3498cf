package app

import (
	"crypto/sha256"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/lay"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// letters of a mark: those that nobody takes for another one, 5 bits each
// [source.OwnChoice].
const letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// halfLength of a mark: one pair of halves in a million is alike by chance
// [source.OwnChoice].
const halfLength = 4

// markOf a lay tells it from others: "K7P3-2MXD". The first half is of what is laid, the
// cloth and its pieces as they are asked for; the second of where each piece lies.
func markOf(p lay.Plan, asked []pieces.Piece) string {
	where := []string{p.Lay.String(), fmt.Sprintf("%.2f", p.FoldedIn)}
	for _, l := range p.Pieces {
		where = append(where, fmt.Sprintf("%q %q %q %d %t %t %s %s %s", l.Name, l.Garment, l.Size, l.Bed, l.OnFold,
			l.Mirrored, hundredths(l.Turn), hundredths(l.X), hundredths(l.Y)))
	}
	slices.Sort(where)
	return half(store.Key(p.Cloth, asked)) + "-" + half(strings.Join(where, "\n"))
}

// hundredths of a millimetre or a degree: a layout that is laid anew differs by less.
func hundredths(x float64) string { return strings.Replace(fmt.Sprintf("%.2f", x), "-0.00", "0.00", 1) }

func half(of string) string {
	sum := sha256.Sum256([]byte(of))
	out := make([]byte, halfLength)
	for i := range out {
		out[i] = letters[sum[i]%byte(len(letters))]
	}
	return string(out)
}

// SinceQuote says how a plan differs from what the job was last quoted on, and the mark
// of that.
func SinceQuote(work *job.Work, search Search, p Planned) (Change, string) {
	mark := quotedBefore(work, search)[p.Cloth.Name].Mark
	switch {
	case mark == "" || mark == p.Mark:
		return Unchanged, mark
	case len(mark) > halfLength && strings.HasPrefix(p.Mark, mark[:halfLength+1]):
		return LayChanged, mark
	}
	return JobChanged, mark
}

// remember what a job is quoted on, for the plans that are drawn afterwards.
func remember(work *job.Work, search Search, cloths []quote.ClothRequest) {
	if search.Anew {
		return
	}
	kept := store.Quoted{}
	for _, one := range cloths {
		kept[one.Cloth] = store.QuotedCloth{Offer: one.Option.Offer.Name, Mark: one.Option.Amount.Mark}
	}
	store.Open().Remember(jobPath(work), kept)
}

func quotedBefore(work *job.Work, search Search) store.Quoted {
	if search.Anew {
		return nil
	}
	return store.Open().Recall(jobPath(work))
}

// jobPath is where the job file lies, from wherever it is read.
func jobPath(work *job.Work) string {
	if path, err := filepath.Abs(work.File); err == nil {
		return path
	}
	return work.File
}
