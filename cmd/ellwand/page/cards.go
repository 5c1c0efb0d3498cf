package page

import (
	"context"
	"net/http"
	"path/filepath"
	"strings"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page/clients"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/cmd/ellwand/page/illustration"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces"
	"ellwand/pieces/language"
)

// card is a job of the folder as it is shown beside others.
type card struct {
	Name     string   `json:"name"`
	Title    string   `json:"title"`
	Client   string   `json:"client"`
	Garments []string `json:"garments"`
	Picture  string   `json:"picture"`
	Fault    string   `json:"fault"`
}

func (s *server) showFolder(w http.ResponseWriter, r *http.Request) {
	names, err := s.now().folder.Names(".yaml", ".yml")
	if err != nil {
		answerFault(w, r, err)
		return
	}
	cards := []card{}
	for _, name := range names {
		if one, is := s.card(name, readerOf(r)); is {
			cards = append(cards, one)
		}
	}
	known, err := clients.Read(s.now().folder)
	if err != nil {
		known = []clients.Client{} // what is wrong with their file is said where they are shown
	}
	answer(w, http.StatusOK, map[string]any{"folder": s.now().folder.Path(), "jobs": cards, "clients": known})
}

// chooseFolder opens another folder, by its path from the top.
func (s *server) chooseFolder(w http.ResponseWriter, r *http.Request) {
	var chosen struct {
		Folder string `json:"folder"`
	}
	if err := asked(r, &chosen); err != nil || !filepath.IsAbs(chosen.Folder) {
		answerCoded(w, r, http.StatusBadRequest, errPath)
		return
	}
	f, err := folder.Open(chosen.Folder)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	s.open(f)
	if s.options.Chosen != nil {
		s.options.Chosen(f.Path())
	}
	s.told.tell(eventOf("jobs", struct{}{}))
	s.showFolder(w, r)
}

// card of a file; false for a YAML file that is no job.
func (s *server) card(name string, reader language.Language) (card, bool) {
	out := card{Name: name, Title: strings.TrimSuffix(strings.TrimSuffix(name, ".yaml"), ".yml"), Garments: []string{},
		Picture: "/picture/job/" + name + ".svg"}
	text, err := s.now().folder.Read(name, limit.JobSize)
	if err != nil {
		out.Fault = sentence(language.OfError(err).In(reader))
		return out, true
	}
	keys, is := edit.Tree(string(text)).(map[string]any)
	if !is {
		out.Fault = language.Say("This file cannot be read as it stands.",
			"Diese Datei lässt sich so nicht lesen.").In(reader)
		return out, true
	}
	if keys["garments"] == nil && keys["job"] == nil {
		return out, false
	}
	if title, is := keys["job"].(string); is {
		out.Title = title
	}
	out.Client, _ = keys["client"].(string)
	list, _ := keys["garments"].([]any)
	for _, one := range list {
		garment, _ := one.(map[string]any)
		if called, is := garment["name"].(string); is {
			out.Garments = append(out.Garments, called)
		}
	}
	return out, true
}

// drawable is a job of the folder by its name; false where it cannot be drawn as it stands,
// which is answered.
func (s *server) drawable(w http.ResponseWriter, r *http.Request, name string) (*job.Work, bool) {
	text, err := s.now().folder.Read(name, limit.JobSize)
	if err != nil {
		answerCoded(w, r, http.StatusNotFound, errNoJob)
		return nil, false
	}
	file, err := job.Parse(s.now().folder.PathOf(name), text)
	if err == nil {
		var work *job.Work
		if work, err = file.Resolve(); err == nil {
			return work, true
		}
	}
	answerCoded(w, r, http.StatusNotFound, errFaulty)
	return nil, false
}

// jobPicture draws the pieces of a job small.
func (s *server) jobPicture(w http.ResponseWriter, r *http.Request) {
	name, _ := strings.CutSuffix(r.PathValue("name"), ".svg")
	work, ok := s.drawable(w, r, name)
	if !ok {
		return
	}
	var all []pieces.Piece
	for _, made := range work.Garments {
		all = append(all, made.Pieces...)
	}
	w.Header().Set("Content-Type", "image/svg+xml")
	_ = illustration.Job(w, work.Title(), all) // who asks may be gone
}

// cardAmount answers how much a job takes of its first cloth, in its first width.
func (s *server) cardAmount(w http.ResponseWriter, r *http.Request) {
	work, ok := s.drawable(w, r, r.PathValue("name"))
	if !ok {
		return
	}
	found, err := s.atOnce(r.Context(), work)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	answer(w, http.StatusOK, map[string]any{
		"cloth": found.Cloth.Name, "width_mm": found.Cloth.Width, "units": work.Unit.String(),
		"buy": words.BuyInStore(found.Cloth, found.Lays[found.Chosen]),
	})
}

// between looks at the folder for changes from outside [source.OwnChoice].
const between = 700 * time.Millisecond

// watchFolder looks for changes from outside as long as the page is open. It looks at the
// files that are on desks themselves, which works on every file system.
func (s *server) watchFolder(ctx context.Context) {
	ticker := time.NewTicker(between)
	defer ticker.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case <-ticker.C:
			for _, one := range s.now().jobs.all() {
				one.look()
			}
		}
	}
}
