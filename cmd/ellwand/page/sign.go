package page

import (
	"encoding/json"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"time"
)

// sign says where a page is open, for a second start of the program by the same user.
type sign struct {
	Host   string `json:"host"`
	Secret string `json:"secret"`
	Folder string `json:"folder"`
}

// putUpSign writes the sign, which only its user may read; the function that it returns
// takes it down.
func (s *server) putUpSign() (takeDown func()) {
	path := s.options.Sign
	if path == "" {
		return func() {}
	}
	text, err := json.Marshal(sign{s.door.host, s.door.secret, s.now().folder.Path()})
	if err == nil {
		err = os.MkdirAll(filepath.Dir(path), 0o700)
	}
	if err == nil {
		err = os.WriteFile(path, text, 0o600)
	}
	if err != nil {
		return func() {} // a second start opens a page of its own
	}
	return func() {
		if now, err := os.ReadFile(path); err == nil && string(now) == string(text) {
			_ = os.Remove(path) // what is left of it leads nowhere
		}
	}
}

// patience with a page that may be no more [source.OwnChoice].
const patience = 2 * time.Second

// Running asks the page that a sign leads to for an address that opens it. It reports
// false where there is none, or where it has another folder open than that one; an empty
// folder is any.
func Running(path, folder string) (address string, is bool) {
	text, err := os.ReadFile(path)
	var found sign
	if err != nil || json.Unmarshal(text, &found) != nil || !strings.HasPrefix(found.Host, "127.0.0.1:") {
		return "", false
	}
	if folder != "" {
		if full, err := filepath.Abs(folder); err != nil || full != found.Folder {
			return "", false
		}
	}
	request, err := http.NewRequest(http.MethodPost, "http://"+found.Host+keyPath, nil)
	if err != nil {
		return "", false
	}
	request.Header.Set(secretHeader, found.Secret)
	answer, err := (&http.Client{Timeout: patience}).Do(request)
	if err != nil {
		return "", false
	}
	defer answer.Body.Close()
	var out struct {
		Address string `json:"address"`
	}
	err = json.NewDecoder(answer.Body).Decode(&out)
	return out.Address, err == nil && strings.HasPrefix(out.Address, "http://"+found.Host+"/?key=")
}
