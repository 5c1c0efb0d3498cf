package store

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"os"
	"path/filepath"
)

// QuotedCloth is what a cloth of a job was last quoted on.
type QuotedCloth struct {
	// Offer that was taken, and the mark of the lay.
	Offer string `json:"offer"`
	Mark  string `json:"mark"`
}

// Quoted is what a job was last quoted on, by cloth.
type Quoted map[string]QuotedCloth

type quotedFile struct {
	Format int    `json:"format_version"`
	Cloths Quoted `json:"cloths"`
}

// Limits of what is kept of a quote [source.OwnChoice].
const (
	mostQuoteBytes = 64 << 10
	mostQuotes     = 1000
)

// quotes lie beside the layouts.
func (s *Store) quotes() string { return filepath.Join(filepath.Dir(s.folder), "quotes") }

func (s *Store) quotePath(job string) string {
	sum := sha256.Sum256([]byte(job))
	return filepath.Join(s.quotes(), hex.EncodeToString(sum[:])[:40]+".json")
}

// Remember what a job, by the path of its file, was quoted on. A store that cannot be
// written is no reason to fail.
func (s *Store) Remember(job string, q Quoted) {
	if s == nil || os.MkdirAll(s.quotes(), 0o700) != nil {
		return
	}
	var data bytes.Buffer
	if json.NewEncoder(&data).Encode(quotedFile{format, q}) != nil || data.Len() > mostQuoteBytes {
		return
	}
	replace(s.quotePath(job), data.Bytes())
	sweep(s.quotes(), mostQuotes*mostQuoteBytes/16, mostQuotes*mostQuoteBytes/32)
}

// Recall what a job was last quoted on; none where that is not known.
func (s *Store) Recall(job string) Quoted {
	if s == nil {
		return nil
	}
	data, err := readAtMost(s.quotePath(job), mostQuoteBytes)
	if err != nil {
		return nil
	}
	var in quotedFile
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.DisallowUnknownFields()
	if decoder.Decode(&in) != nil || in.Format != format {
		return nil
	}
	for cloth, one := range in.Cloths {
		if len(cloth)+len(one.Offer)+len(one.Mark) > mostName {
			return nil
		}
	}
	return in.Cloths
}
