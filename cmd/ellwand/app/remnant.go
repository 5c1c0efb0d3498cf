package app

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
)

// PieceOfCloth is a cloth that is there already, or several remnants of it that
// are asked about together.
type PieceOfCloth struct {
	Cloth  cloth.Cloth
	Length float64
	// Offcuts are the remnants, and Row where each lies in the row that they are
	// laid on as; both empty for a single one.
	Offcuts []remnant.Offcut
	Row     []lay.OffcutPlace
	// OnThread is the same cloth with nothing taken off for straightening its
	// ends, where the job does not say what that takes and the least that is
	// usual is taken off; nil where it does.
	OnThread *PieceOfCloth
	// Closely is the same cloth with nothing taken off for hand laying, and Exact
	// that with nothing for its ends either and as little shrinkage as its fibre may
	// have, on which a no is proven; nil where they are no other cloth.
	Closely, Exact *PieceOfCloth
}

// RemnantQuestion says which cloth is asked about. What is empty or 0 is as the
// job has it.
type RemnantQuestion struct {
	Cloth         string
	Length, Width float64
}

// PiecesOfCloth says which pieces of cloth are asked about.
func PiecesOfCloth(work *job.Work, q RemnantQuestion) ([]PieceOfCloth, error) {
	offers, err := q.offers(work)
	if err != nil {
		return nil, err
	}
	var out []PieceOfCloth
	for _, offer := range offers {
		one, err := q.straightened(work, offer)
		if err != nil {
			return nil, err
		}
		out = append(out, one)
	}
	return out, nil
}

// offers are the cloths of the job that are asked about.
func (q RemnantQuestion) offers(work *job.Work) ([]job.Offer, error) {
	var names []string
	var out []job.Offer
	for _, offer := range work.Cloths {
		names = append(names, offer.Cloth.Name)
		if q.Cloth == "" || job.Slug(offer.Cloth.Name) == job.Slug(q.Cloth) {
			out = append(out, offer)
		}
	}
	if len(out) == 0 {
		return nil, refuse("%s %q: the job has no such cloth; it has %s", ArgumentCloth, q.Cloth, strings.Join(names, " and "))
	}
	if len(out) == 1 {
		return out, nil
	}
	if q.sized() {
		return nil, tooMany(names)
	}
	out = slices.DeleteFunc(out, func(offer job.Offer) bool { return offer.Length == 0 && len(offer.Remnants) == 0 })
	if len(out) == 0 {
		return nil, refuseAt(work.AtCloth(names[0]), "no cloth has a length; add length: to the cloth that is there already, "+
			"or ask with %s %s %s 1.6m", ArgumentCloth, names[0], ArgumentLength)
	}
	return out, nil
}

// tooMany cloths to know which one is meant.
func tooMany(names []string) error {
	format, args := "the job has %d cloths; say which one the piece is of: ", []any{len(names)}
	for i, name := range names {
		if i > 0 {
			format += " or "
		}
		format, args = format+"%s %s", append(args, ArgumentCloth, name)
	}
	return refuse(format, args...)
}

// sized says that the question gives a size of its own.
func (q RemnantQuestion) sized() bool { return q.Length > 0 || q.Width > 0 }

// straightened is the piece of cloth that is asked about. What is there already
// was most likely torn or cut askew: where the job does not say what
// straightening it takes, it takes the least that is usual, so that a yes holds.
// For the same reason what hand laying takes is left over.
func (q RemnantQuestion) straightened(work *job.Work, offer job.Offer) (PieceOfCloth, error) {
	straight := func(c *cloth.Cloth) { c.Straighten = 0 }
	askew := func(c *cloth.Cloth) { c.Straighten = plan.LeastStraightening }
	if offer.Straightened {
		straight, askew = func(*cloth.Cloth) {}, func(*cloth.Cloth) {}
	}
	closely := func(c *cloth.Cloth) { c.HandLaying = cloth.Addition{} }
	least := func(c *cloth.Cloth) { c.Shrinkage = c.Shrinkage.Least() }
	exact := changed(offer, straight, closely, least)
	out, err := q.pieceOf(work, changed(offer, askew))
	if err != nil { // there is less of it than that
		return q.pieceOf(work, exact)
	}
	if out.OnThread, err = q.otherThan(out, work, changed(offer, straight)); err != nil {
		return out, err
	}
	if out.Closely, err = q.otherThan(out, work, changed(offer, askew, closely)); err != nil {
		return out, err
	}
	out.Exact, err = q.otherThan(out, work, exact)
	return out, err
}

// changed is an offer of a cloth with something changed about the cloth, wherever it
// is sold.
func changed(offer job.Offer, changes ...func(*cloth.Cloth)) job.Offer {
	offer.Offers = slices.Clone(offer.Offers)
	for _, change := range changes {
		change(&offer.Cloth)
		for i := range offer.Offers {
			change(&offer.Offers[i].Cloth)
		}
	}
	return offer
}

// otherThan is a piece of cloth as an offer has it; nil where it is the same.
func (q RemnantQuestion) otherThan(piece PieceOfCloth, work *job.Work, offer job.Offer) (*PieceOfCloth, error) {
	out, err := q.pieceOf(work, offer)
	if err != nil {
		return nil, err
	}
	a, b := out.Cloth, piece.Cloth
	if out.Length == piece.Length && a.Straighten == b.Straighten && a.HandLaying == b.HandLaying && a.Shrinkage == b.Shrinkage {
		return nil, nil
	}
	return &out, nil
}

func (q RemnantQuestion) pieceOf(work *job.Work, offer job.Offer) (PieceOfCloth, error) {
	name := offer.Cloth.Name
	if len(offer.Remnants) > 0 && !q.sized() {
		together, err := remnant.Together(offer.Cloth, offer.Remnants)
		if err != nil {
			return PieceOfCloth{}, fmt.Errorf("%s: %w", work.AtCloth(name), err)
		}
		return PieceOfCloth{Cloth: together.Cloth, Length: together.Length, Offcuts: offer.Remnants,
			Row: together.Offcuts}, nil
	}
	length, width := q.Length, q.Width
	if length == 0 {
		length = offer.Length
	}
	switch {
	case length == 0:
		return PieceOfCloth{}, refuseAt(work.AtCloth(name), "the length of cloth %q is not known; add length: to it, "+
			"or ask with %s 1.6m", name, ArgumentLength)
	case width == 0 && len(offer.Widths) > 1:
		return PieceOfCloth{}, refuseAt(work.AtCloth(name), "cloth %q has %d widths; say which one the piece has: %s %s",
			name, len(offer.Widths), ArgumentWidth, strings.ReplaceAll(work.Format(offer.Widths[0]), " ", ""))
	case width == 0:
		width = offer.Widths[0]
	}
	cloths, err := clothIn(work, offer, []float64{width})
	if err != nil {
		return PieceOfCloth{}, err
	}
	return PieceOfCloth{Cloth: cloths[0], Length: length}, nil
}

// RemnantAnswer is what came of a question.
type RemnantAnswer struct {
	PieceOfCloth
	Fit remnant.Result
	// Tried is what might have made it fit, in words, and Ways what does. Both
	// empty where it is enough.
	Tried []string
	Ways  []remnant.Remedy
	// Approximate are the pieces whose outlines the maker calls so.
	Approximate []string
	// Rough are the pieces that were measured or traced, and Accuracy is how far
	// the true outline of the roughest may lie from its own, mm. They are laid
	// larger by it.
	Rough    []string
	Accuracy float64
	// Ended says whether the search was ended early, so that what would make it fit
	// was not looked for, or not to the end.
	Ended plan.Ended
}

// Remnant asks whether a piece of cloth is enough for a job, in the lay given
// or when that is nil in any; when it is not, it looks for what would make it
// so. Each change has a share of the effort that the question has.
func Remnant(ctx context.Context, file *job.File, work *job.Work, piece PieceOfCloth, kind *lay.Kind, limits Limits,
	search Search, watch Watch) (RemnantAnswer, error) {
	out, begun := RemnantAnswer{PieceOfCloth: piece}, time.Now()
	question, err := questionOf(work, piece, kind)
	if err != nil {
		return out, err
	}
	out.Fit, err = fit(ctx, question, search, watch)
	if err == nil && out.Fit.Answer == remnant.TooLittle && piece.Exact != nil {
		out.Fit, err = proven(ctx, on(*piece.Exact, question), out.Fit, search, watch)
	}
	out.Rough, out.Accuracy = Rough(question.Pieces)
	if err == nil && out.Fit.Answer == remnant.TooLittle && len(out.Rough) > 0 {
		out.Fit, err = provenOfLeast(ctx, piece, question, out.Fit, search, watch)
	}
	out.Approximate = approximate(question.Pieces)
	if out.Fit.Answer == remnant.TooLittle && len(out.Approximate) > 0 {
		out.Fit.Answer = remnant.NotFound // of outlines that are larger than the true ones nothing is proven
	}
	out.Ended = search.ended(ctx, out.Fit.Work, begun)
	switch {
	case err != nil:
		return out, clothError(work, piece.Cloth, err)
	case out.Fit.Answer == remnant.Enough:
		out.Ended.Early = false // it is, whatever was still to be tried
		return out, nil
	case out.Ended.Early:
		return out, nil
	}
	every := changes(file, work, question, limits)
	every = append(withCare(piece), every...)
	out.Ways, err = remnant.Search(ctx, question, every, remnant.Options{
		Effort: search.Effort, Passes: search.Passes, Seed: search.Seed, Workers: search.Workers, Known: out.Fit.Plan,
		Fit: newFinder(search).fitChanged,
		Trying: func(c remnant.Change) {
			what := c.Say(c.Most, work.Format)
			out.Tried = append(out.Tried, what)
			if watch.Trying != nil {
				watch.Trying(what)
			}
		},
	})
	if err != nil {
		return out, clothError(work, piece.Cloth, err)
	}
	out.Ended.Early = ctx.Err() != nil
	return out, nil
}

// provenOfLeast looks whether a no to pieces as large as they may be holds for
// pieces as small as they may be. Where it does not, it is no proof.
func provenOfLeast(ctx context.Context, piece PieceOfCloth, q remnant.Question, no remnant.Result, search Search,
	watch Watch) (remnant.Result, error) {
	least, ok := q, true
	least.Pieces = nil
	for _, p := range q.Pieces {
		small, sure := p.AtLeast()
		ok = ok && sure
		least.Pieces = append(least.Pieces, small)
	}
	if piece.OnThread != nil {
		least = on(*piece.OnThread, least)
	}
	if ok {
		out, err := fit(ctx, least, search, watch)
		if err != nil || out.Answer == remnant.TooLittle {
			return out, err
		}
	}
	no.Answer = remnant.NotFound
	return no, nil
}

// approximate names the pieces that are given only approximately, each once.
func approximate(all []pieces.Piece) []string {
	var out []string
	for _, p := range all {
		if p.Approximate && !slices.Contains(out, p.Name) {
			out = append(out, p.Name)
		}
	}
	return out
}

func fit(ctx context.Context, q remnant.Question, search Search, watch Watch) (remnant.Result, error) {
	options := search.options()
	options.Lays, options.Progress = q.Lays, watch.on(q.Cloth)
	there := remnant.Remnant{Cloth: q.Cloth, Length: q.Length, Offcuts: q.Offcuts}
	return newFinder(search).fit(ctx, there, q.Pieces, options)
}

// proven looks whether a no that takes something off for straightening holds
// where nothing is. Where it does not, it is no proof.
func proven(ctx context.Context, onThread remnant.Question, no remnant.Result, search Search, watch Watch) (remnant.Result,
	error) {
	out, err := fit(ctx, onThread, search, watch)
	if err != nil || out.Answer == remnant.TooLittle {
		return out, err
	}
	out.Answer, out.Usable, out.Spare = remnant.NotFound, no.Usable, remnant.Spare{}
	out.Over = remnant.Overhangs(out.Plan, no.Usable)
	return out, nil
}

// on asks a question of another piece of cloth.
func on(piece PieceOfCloth, q remnant.Question) remnant.Question {
	q.Cloth, q.Length, q.Offcuts = piece.Cloth, piece.Length, piece.Row
	return q
}

// withCare are the ways to use more of the cloth itself.
func withCare(piece PieceOfCloth) []remnant.Change {
	const closely = "lay and chalk it to the millimetre, so that hand laying takes nothing"
	const straight = "find that both cut ends run along a thread, and need no straightening"
	var out []remnant.Change
	if piece.Closely != nil {
		out = append(out, asIf(*piece.Closely, "close laying", closely))
	}
	if piece.OnThread != nil {
		out = append(out, asIf(*piece.OnThread, "straight ends", straight))
	}
	if len(out) == 2 && piece.Exact.Cloth.Shrinkage == piece.Cloth.Shrinkage {
		out = append(out, asIf(*piece.Exact, "close laying and straight ends", closely+", and "+straight))
	}
	return out
}

// asIf asks about another measure of the same cloth.
func asIf(piece PieceOfCloth, kind, what string) remnant.Change {
	return remnant.Change{
		Kind: kind,
		Make: func(q remnant.Question, _ float64) (remnant.Question, bool) { return on(piece, q), true },
		Say:  func(float64, func(float64) string) string { return what },
	}
}

func questionOf(work *job.Work, piece PieceOfCloth, kind *lay.Kind) (remnant.Question, error) {
	out := remnant.Question{Cloth: piece.Cloth, Length: piece.Length, Offcuts: piece.Row,
		Pieces: work.PiecesOf(piece.Cloth.Name)}
	if kind != nil {
		out.Lays = []lay.Kind{*kind}
	}
	if remnant.MustLieOpen(piece.Offcuts) {
		if kind != nil && *kind != lay.Open {
			return out, refuseAt(work.AtCloth(piece.Cloth.Name), "the remnants of cloth %q are of unlike widths or no rectangles, "+
				"so that no one fold halves them; leave %s out", piece.Cloth.Name, ArgumentLay)
		}
		out.Lays = []lay.Kind{lay.Open}
	}
	return out, nil
}
