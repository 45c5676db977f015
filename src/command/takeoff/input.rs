//! A file or standard input, piece by piece.

use super::progress::Progress;
use axum::body::Bytes;
use futures_util::{Stream, stream};
use std::io;
use std::path::Path;
use std::pin::Pin;
use tokio::fs::File;
use tokio::io::{AsyncRead, AsyncReadExt};

/// What one read asks for.
const PIECE: usize = 64 * 1024;

/// A file that is being read.
pub struct Input {
    reader: Pin<Box<dyn AsyncRead + Send>>,
    /// How long it is, where that is known.
    pub length: Option<u64>,
}

impl Input {
    /// Opens a file; `-` is standard input.
    pub async fn open(file: &Path) -> io::Result<Self> {
        if file == Path::new("-") {
            return Ok(Self { reader: Box::pin(tokio::io::stdin()), length: None });
        }
        let file = File::open(file).await?;
        let facts = file.metadata().await?;
        if facts.is_dir() {
            return Err(io::ErrorKind::IsADirectory.into());
        }
        Ok(Self { reader: Box::pin(file), length: facts.is_file().then_some(facts.len()) })
    }

    /// All of it.
    pub async fn whole(mut self) -> io::Result<Bytes> {
        let mut all = Vec::new();
        self.reader.read_to_end(&mut all).await?;
        Ok(all.into())
    }

    /// Its pieces, each counted as progress.
    pub fn pieces(self, progress: Progress) -> impl Stream<Item = io::Result<Bytes>> + Send + Unpin {
        Box::pin(stream::unfold((self.reader, progress), |(mut reader, progress)| async move {
            let mut piece = vec![0; PIECE];
            match reader.read(&mut piece).await {
                Ok(0) => None,
                Ok(length) => {
                    piece.truncate(length);
                    progress.add(length as u64);
                    Some((Ok(Bytes::from(piece)), (reader, progress)))
                }
                Err(error) => Some((Err(error), (reader, progress))),
            }
        }))
    }
}
