package page

import (
	"context"
	"maps"
	"net/http"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/starter"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/strict"
	"ellwand/cmd/ellwand/words"
	"ellwand/fabric/plan"
)

// beginning is what a job is to be begun with.
type beginning struct {
	// From is person, pattern, cloth or copy; Of is the job that is copied.
	From string  `json:"from"`
	Of   string  `json:"of"`
	File *upload `json:"file"`
	starter.Begin
}

// beginJob writes a new job into the folder.
func (s *server) beginJob(w http.ResponseWriter, r *http.Request) {
	var b beginning
	if err := asked(r, &b); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	text, err := s.begun(b)
	if err == nil {
		var name string
		if name, err = s.written(nameFor(b), text); err == nil {
			s.told.tell(eventOf("jobs", struct{}{}))
			answer(w, http.StatusCreated, map[string]string{"job": name})
			return
		}
	}
	answerFault(w, r, err)
}

// nameFor a new job: its title, or else its garment.
func nameFor(b beginning) string {
	for _, name := range []string{b.Title, b.Garment} {
		if name != "" {
			return job.Slug(name)
		}
	}
	return "job"
}

// begun is the text that a job begins with.
func (s *server) begun(b beginning) (string, error) {
	if b.From == "copy" {
		text, err := s.now().folder.Read(b.Of, limit.JobSize)
		if err != nil || b.Title == "" {
			return string(text), err
		}
		return edit.Set(string(text), strict.Top("job"), edit.Text(b.Title), nil)
	}
	if b.File != nil {
		name, err := s.broughtIn(*b.File)
		if err != nil {
			return "", err
		}
		b.Pattern = name
		if b.Garment == "" {
			b.Garment = strings.ReplaceAll(b.File.base(), "-", " ")
		}
		text, err := s.now().folder.Read(name, limit.PiecesFile)
		if err != nil {
			return "", err
		}
		b.Cloths, b.PatternSize = namedIn(edit.Tree(string(text)))
	}
	return b.Text()
}

// namedIn a file of pieces: the cloths that its pieces are cut from, empty for those that
// say none, and the first of their sizes.
func namedIn(tree any) (cloths []string, size string) {
	keys, _ := tree.(map[string]any)
	list, _ := keys["pieces"].([]any)
	for _, one := range list {
		piece, _ := one.(map[string]any)
		from, _ := piece["cut"].(map[string]any) // how many are cut, by cloth
		if len(from) == 0 {
			cloth, _ := piece["cloth"].(string)
			from = map[string]any{cloth: nil}
		}
		for _, cloth := range slices.Sorted(maps.Keys(from)) {
			if !slices.Contains(cloths, cloth) {
				cloths = append(cloths, cloth)
			}
		}
		if said, is := piece["size"].(string); is && size == "" {
			size = said
		}
	}
	return cloths, size
}

// quickPasses for the first answer, which comes at once [source.OwnChoice].
const quickPasses = 60

// answerQuestion says how much cloth a garment takes, and saves nothing.
func (s *server) answerQuestion(w http.ResponseWriter, r *http.Request) {
	var b beginning
	if err := asked(r, &b); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	found, work, err := s.estimated(r, b)
	if err != nil {
		answerFault(w, r, plainIn(work, err))
		return
	}
	if err := words.Proven(work, []app.Estimated{found}); err != nil {
		answerFault(w, r, failure.Of(err))
		return
	}
	chosen := found.Lays[found.Chosen]
	say := work.Unit.System().Purchase
	answer(w, http.StatusOK, map[string]any{
		"buy": words.BuyInStore(found.Cloth, chosen), "buy_mm": found.Amount.Buy, "chosen": chosen.Lay.String(),
		"lays": lengthsOf(found), "low": say(found.Range.Low), "high": say(found.Range.High),
	})
}

// lengthsOf the lays that are possible, as the report has them.
func lengthsOf(found app.Estimated) []report.Lay {
	var out []report.Lay
	for _, p := range found.Lays {
		if p.Possible() {
			out = append(out, report.Lay{Lay: p.Lay.String(), LengthMM: p.Taken})
		}
	}
	return out
}

func (s *server) estimated(r *http.Request, b beginning) (app.Estimated, *job.Work, error) {
	b.Title = "question"
	text, err := b.Text()
	if err != nil {
		return app.Estimated{}, nil, err
	}
	file, err := job.Parse("question", []byte(text))
	if err != nil {
		return app.Estimated{}, nil, err
	}
	work, err := file.Resolve()
	if aboutWidth(err) {
		return app.Estimated{}, nil, narrowWidth(b.Units, b.Width)
	}
	if err != nil {
		return app.Estimated{}, nil, err
	}
	found, err := s.atOnce(r.Context(), work)
	return found, work, err
}

// atOnce is how much a job takes of its first cloth in its first width, after a quick
// search; what was found before is taken into account.
func (s *server) atOnce(ctx context.Context, work *job.Work) (app.Estimated, error) {
	cloths, err := app.Cloths(work, nil)
	if err != nil {
		return app.Estimated{}, err
	}
	search := s.options.Search
	search.Effort = plan.Quick
	if search.Passes == 0 {
		search.Passes = quickPasses
	}
	found, err := app.Estimate(ctx, work, cloths[:1], search, app.Watch{})
	if err != nil {
		return app.Estimated{}, err
	}
	return found[0], nil
}

// showSizes of a table, with the girths of each as the table has them.
func showSizes(w http.ResponseWriter, r *http.Request) {
	table, err := app.Table(r.URL.Query().Get("table"))
	if err != nil {
		answerError(w, r, http.StatusNotFound, sentence(err.Error()))
		return
	}
	answer(w, http.StatusOK, map[string]any{"sizes": table.Sizes, "girths": table.Girths, "unit": table.Unit.String()})
}
