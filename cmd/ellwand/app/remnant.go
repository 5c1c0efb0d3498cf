package app

import (
	"context"
	"slices"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
)

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
	// Range is between which lengths of the piece of cloth the job may prove to take,
	// where it is enough and in one piece, mm; empty too where
	// the search was ended before that was known.
	Range quote.Range
	// Stay says that pieces stay where they lie, so that what would make it fit is not
	// looked for.
	Stay bool
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
	out.Stay = len(search.fixedOn(piece.Cloth.Name).Pieces) > 0
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
		if len(piece.Offcuts) == 0 {
			out.Range = takenOf(ctx, work, piece, out.Fit.Plan, search)
		}
		return out, nil
	case out.Ended.Early || out.Stay:
		return out, nil
	}
	every := changes(file, work, question, limits)
	every = append(withCare(piece), every...)
	out.Ways, err = remnant.Search(ctx, question, every, remnant.Options{
		Effort: search.Effort, Passes: search.Passes, Seed: search.Seed, Workers: search.Workers, Known: out.Fit.Plan,
		Fit: newFinder(search).fitChanged,
		Trying: func(c remnant.Change) {
			what := reason.Help(c.With(c.Most), work.Format)
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

// takenOf a piece of cloth is between which lengths a lay of it may prove to take; empty
// where the context ends before that is drafted.
func takenOf(ctx context.Context, work *job.Work, piece PieceOfCloth, laid lay.Plan, search Search) quote.Range {
	c := piece.Cloth
	c.PurchaseStep, c.Minimum, c.Safety = 0, 0, cloth.Addition{}
	amount := quote.AmountOf(quote.Offer{Cloth: c}, quote.Found{Taken: laid.Taken, Bound: laid.Taken})
	doubts, err := newDoubter(ctx, work, search)
	if err != nil {
		return quote.Range{}
	}
	return doubts.rangeOf(c, amount, false)
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
	if ok && len(search.Fix) == 0 { // what is cut already is no smaller
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
	options.Lays, options.Progress, options.Fixed = q.Lays, watch.on(q.Cloth), search.fixedOn(q.Cloth.Name)
	there := remnant.Remnant{Cloth: q.Cloth, Length: q.Length, Offcuts: q.Offcuts}
	return newFinder(search).fit(ctx, there, q.Pieces, options)
}

// proven looks whether a no that takes something off for straightening holds
// where nothing is. Where it does not, it is no proof.
func proven(ctx context.Context, onThread remnant.Question, no remnant.Result, search Search,
	watch Watch) (remnant.Result, error) {
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
	closely, straight := remnant.Given{Of: remnant.CloseLaying}, remnant.Given{Of: remnant.StraightEnds}
	var out []remnant.Change
	if piece.Closely != nil {
		out = append(out, asIf(*piece.Closely, closely))
	}
	if piece.OnThread != nil {
		out = append(out, asIf(*piece.OnThread, straight))
	}
	if len(out) == 2 && piece.Exact.Cloth.Shrinkage == piece.Cloth.Shrinkage {
		out = append(out, asIf(*piece.Exact, closely, straight))
	}
	return out
}

// asIf asks about another measure of the same cloth.
func asIf(piece PieceOfCloth, gives ...remnant.Given) remnant.Change {
	return remnant.Change{
		Gives: gives,
		Make:  func(q remnant.Question, _ float64) (remnant.Question, bool) { return on(piece, q), true },
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
			return out, refuseAt(work.AtCloth(piece.Cloth.Name), "the remnants of cloth %q are of unlike widths or no "+
				"rectangles, "+
				"so that no one fold halves them; leave %s out", piece.Cloth.Name, ArgumentLay)
		}
		out.Lays = []lay.Kind{lay.Open}
	}
	return out, nil
}
